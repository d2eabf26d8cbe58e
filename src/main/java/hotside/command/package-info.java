// SPDX-License-Identifier: Apache-2.0
/**
 * The command line. Each command is a class of its own; {@link hotside.command.CommandLineDoor}
 * lists them. Numbers in JSON and CSV are SI, pressures absolute, temperatures in kelvin. Exit code
 * 0 is fine, 1 means findings, 2 wrong use.
 */
package hotside.command;

// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

/**
 * An attempt in the record.
 *
 * @param number of the attempt; later ones have higher numbers
 * @param attempt what was tried
 */
public record Stored(long number, Attempt attempt) {}

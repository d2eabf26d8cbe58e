// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

/** The zero that a pressure is counted from. */
public enum Reference {
    /** From a perfect vacuum. */
    ABSOLUTE,
    /** From the air around: what a gauge shows. */
    GAUGE,
    /** No zero of its own (a difference), or not a pressure. */
    NONE
}

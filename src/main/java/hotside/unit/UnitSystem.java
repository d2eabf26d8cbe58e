// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

/** Which units a shop reads: kilopascal and millimetre, or psi and inch. */
public enum UnitSystem {
    SI_SHOP,
    US_SHOP
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

/** Asks the person for a yes, on the screen's thread. */
interface Consent {
    /** True if the person agrees. */
    boolean to(String title, String question);
}

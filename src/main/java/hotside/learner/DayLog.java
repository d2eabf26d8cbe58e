// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

/** The work of one day. */
final class DayLog {
    int tries;
    int right;
}

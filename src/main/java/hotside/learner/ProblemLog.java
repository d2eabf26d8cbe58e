// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

/** How one problem went. */
final class ProblemLog {
    int tries;
    int solved;

    /** Number of the problem, among all that were tried, when it was last tried. */
    long last;
}

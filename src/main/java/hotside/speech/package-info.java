// SPDX-License-Identifier: Apache-2.0
/**
 * Which language the program speaks, and the bundles of words that each room keeps. Start with
 * {@link hotside.speech.Language}. Knows no other room: every room may speak.
 */
package hotside.speech;

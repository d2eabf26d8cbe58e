// SPDX-License-Identifier: Apache-2.0
/**
 * How fast the program is and how much memory it takes, as one table:
 *
 * <pre>mvn -q -Pbench verify</pre>
 *
 * <p>It takes three to four minutes and wants a quiet machine. Start at {@link
 * hotside.bench.Bench}. Desk, table and variants each run in a fresh JVM on the packaged jar,
 * without options, as a person would start it; the classes that do so there stand in the packages
 * whose inside they touch. Single calls are timed by JMH. None of this reaches the jar.
 */
package hotside.bench;

// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

/**
 * One column of a run log.
 *
 * @param header as the file has it
 * @param channel what it measures
 * @param unit the unit it came in, such as {@code kPa gauge}; empty for a pure number and for what
 *     is unknown
 */
public record Column(String header, Channel channel, String unit) {
    /** A column that is in SI already and named by its channel. */
    public static Column of(Channel channel) {
        return new Column(channel.heading(), channel, channel.quantity().siScale().label());
    }
}

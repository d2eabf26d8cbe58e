// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.unit.Scale;

/**
 * What a person says that a column is, for files that do not say it themselves.
 *
 * @param header the column's name in the file; {@code column 3} where there is no header
 * @param channel what it measures
 * @param scale the unit that its readings are in
 */
public record Mapping(String header, Channel channel, Scale scale) {

    /**
     * Reads {@code column=channel unit}, such as {@code Ch7=power kW} or {@code P_exh=p3 psi
     * gauge}.
     *
     * @throws IllegalArgumentException with a message for people
     */
    public static Mapping parse(String text) {
        int equals = text.lastIndexOf('=');
        if (equals < 1) {
            throw new IllegalArgumentException(
                    "\""
                            + text
                            + "\" is not of the form column=quantity unit, such as \"Ch7=power kW\".");
        }
        String said = text.substring(equals + 1).strip();
        ChannelNames names = new ChannelNames();
        HeaderName name =
                HeaderName.of(said, names)
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                "\""
                                                        + said
                                                        + "\" names nothing that a run log holds, or its unit is not known; write such as \"power kW\", \"boost psi gauge\" or \"p3 kPa abs\"."));
        Scale scale =
                name.scale()
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                "\""
                                                        + said
                                                        + "\" needs a unit of "
                                                        + name.meaning()
                                                                .channel()
                                                                .quantity()
                                                                .words()
                                                        + " after it, such as "
                                                        + name.meaning()
                                                                .channel()
                                                                .quantity()
                                                                .si()
                                                                .symbol()
                                                        + "."));
        return new Mapping(text.substring(0, equals).strip(), name.meaning().channel(), scale);
    }
}

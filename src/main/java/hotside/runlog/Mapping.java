// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.unit.Quantity;
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
            throw new IllegalArgumentException(LogWords.of("map.form", text));
        }
        String said = text.substring(equals + 1).strip();
        ChannelNames names = new ChannelNames();
        HeaderName name =
                HeaderName.of(said, names)
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                LogWords.of("map.unknown", said)));
        Scale scale = name.scale().orElseThrow(() -> noUnit(said, name));
        return new Mapping(text.substring(0, equals).strip(), name.meaning().channel(), scale);
    }

    private static IllegalArgumentException noUnit(String said, HeaderName name) {
        Quantity quantity = name.meaning().channel().quantity();
        return new IllegalArgumentException(
                LogWords.of("map.no-unit", said, quantity.words(), quantity.si().symbol()));
    }
}

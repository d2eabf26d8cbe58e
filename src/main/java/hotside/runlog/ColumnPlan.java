// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.unit.Quantity;
import hotside.unit.Scale;

/**
 * How a column is to be read.
 *
 * @param column what it becomes
 * @param scale what its numbers are on; null to keep them as they stand
 */
record ColumnPlan(Column column, Scale scale) {
    static ColumnPlan known(String header, Channel channel, Scale scale) {
        return new ColumnPlan(new Column(header, channel, scale.label()), scale);
    }

    static ColumnPlan unknown(String header) {
        return new ColumnPlan(new Column(header, Channel.UNKNOWN, ""), null);
    }

    Channel channel() {
        return column.channel();
    }

    double toSi(double value, double ambient) {
        Quantity quantity = column.channel().quantity();
        return scale == null ? value : scale.toSi(value, quantity, ambient);
    }
}

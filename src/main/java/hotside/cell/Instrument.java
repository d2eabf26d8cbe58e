// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.statistics.draw.Gaussian;
import hotside.statistics.reading.SensorLag;

/** A sensor during one pull: it remembers what it feels. For one thread. */
final class Instrument {
    private final Sensor sensor;
    private final Gaussian chance;
    private double felt = Double.NaN;

    Instrument(Sensor sensor, Gaussian chance) {
        this.sensor = sensor;
        this.chance = chance;
    }

    Channel channel() {
        return sensor.channel();
    }

    /**
     * The reading after the truth has been this for a while; the first one finds the sensor
     * settled.
     *
     * @param elapsed since the last sample, s
     */
    double sample(double truth, double elapsed) {
        boolean quick = sensor.lag() == 0 || Double.isNaN(felt);
        felt = quick ? truth : felt + (truth - felt) * SensorLag.reached(elapsed, sensor.lag());
        return sensor.shows(felt, chance.next());
    }
}

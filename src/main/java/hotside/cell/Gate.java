// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

/**
 * A wastegate with a flat valve on a spring and a diaphragm.
 *
 * @param toPipe true if its flow returns to the pipe behind the turbine, false if it is vented
 * @param seatDiameter bore of the seat, m
 * @param diaphragmDiameter effective diameter, m
 * @param preload spring force with the valve shut, N
 * @param rate of the spring, N/m
 * @param maxLift where the far stop is, m
 * @param dischargeCoefficient referred to the curtain or the seat, whichever is smaller
 * @param seatLeak bore of a hole that stays open when the valve is shut, m
 * @param stuck true if the valve does not move
 * @param stuckLift where it then stands, m
 */
public record Gate(
        boolean toPipe,
        double seatDiameter,
        double diaphragmDiameter,
        double preload,
        double rate,
        double maxLift,
        double dischargeCoefficient,
        double seatLeak,
        boolean stuck,
        double stuckLift) {}

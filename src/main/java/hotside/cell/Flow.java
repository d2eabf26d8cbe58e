// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.physics.duct.DuctFlow;

/**
 * Air, exhaust and gate while the manifold holds a given pressure; whether turbine and compressor
 * balance is another matter.
 *
 * @param manifoldPressure absolute, Pa
 * @param manifoldTemperature K
 * @param compressorWork on each kilogram of air, J/kg
 * @param airFlow kg/s
 * @param exhaustFlow of the engine, kg/s
 * @param turbineInletPressure absolute, Pa
 * @param turbineOutletPressure that the turbine's flow leaves behind it, absolute, Pa
 * @param turbineOutletTemperature K
 * @param turbineFlow kg/s
 * @param turbineWork from each kilogram through the turbine, J/kg
 * @param signalShare of the boost at the diaphragm
 * @param lift of the gate, m
 * @param gateFlow kg/s
 * @param leakFlow lost before the turbine, kg/s
 * @param pipeFlow kg/s
 * @param pipeTemperature total, K
 * @param duct state of the pipe
 */
record Flow(
        double manifoldPressure,
        double manifoldTemperature,
        double compressorWork,
        double airFlow,
        double exhaustFlow,
        double turbineInletPressure,
        double turbineOutletPressure,
        double turbineOutletTemperature,
        double turbineFlow,
        double turbineWork,
        double signalShare,
        double lift,
        double gateFlow,
        double leakFlow,
        double pipeFlow,
        double pipeTemperature,
        DuctFlow.State duct) {

    /** By how much the turbine leaves more pressure behind it than the pipe asks for, Pa. */
    double miss() {
        return turbineOutletPressure - duct.inletTotal();
    }
}

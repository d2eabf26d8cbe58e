// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

/**
 * By how much the balances of an operating point fail, each as a share of what is balanced. A
 * solved point has all of them near 0; while a rotor spins up only {@link #shaft} has not.
 *
 * @param mass turbine and gate, each worked from its pressures, against the engine's exhaust
 * @param energy heat that the exhaust lost on its way into the pipe against the turbine's work
 * @param shaft turbine against compressor, over the turbine's
 * @param pipe pressure that the pipe asks for against that behind the turbine
 * @param force on a gate between its stops, over its preload; 0 on a stop
 */
public record Residuals(double mass, double energy, double shaft, double pipe, double force) {
    /** The greatest of them, without its sign. */
    public double greatest() {
        double most = 0;
        for (double one : new double[] {mass, energy, shaft, pipe, force}) {
            most = Math.max(most, Math.abs(one));
        }
        return most;
    }
}

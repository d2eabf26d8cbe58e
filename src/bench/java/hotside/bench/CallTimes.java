// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import hotside.physics.duct.DuctFlow;
import hotside.physics.duct.FrictionFactor;
import hotside.physics.duct.Pipe;
import hotside.physics.gas.ExhaustGas;
import hotside.physics.gate.CrackPressure;
import hotside.physics.gate.GateLift;
import hotside.statistics.RunsNeeded;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Times of single calls into the core, each over a thousand different inputs of the usual kind. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class CallTimes {
    private static final int INPUTS = 1024;

    /** A call, what it is called in the table and how many nanoseconds it may take. */
    private record Call(String method, String what, double aim) {}

    private static final List<Call> CALLS =
            List.of(
                    new Call("frictionFactor", "Friction factor, one call", 200),
                    new Call("ductFlow", "Duct flow, one call", 5_000),
                    new Call("exhaustGas", "Exhaust gas with its properties, one call", 1_000),
                    new Call("gateBalance", "Gate balance: crack pressure and lift", Double.NaN),
                    new Call("sampleSize", "Sample size: runs needed", Double.NaN));

    private final double[] flow = new double[INPUTS];
    private final double[] temperature = new double[INPUTS];
    private final double[] lambda = new double[INPUTS];
    private final double[] reynolds = new double[INPUTS];
    private final double[] roughness = new double[INPUTS];
    private final double[] boost = new double[INPUTS];
    private final double[] effect = new double[INPUTS];
    private final Pipe[] pipe = new Pipe[INPUTS];
    private final ExhaustGas gas = ExhaustGas.at(0.85);
    private int next;

    public CallTimes() {
        Random random = new Random(1);
        for (int i = 0; i < INPUTS; i++) {
            flow[i] = 0.01 + 0.2 * random.nextDouble();
            temperature[i] = 600 + 600 * random.nextDouble();
            lambda[i] = 0.7 + random.nextDouble();
            reynolds[i] = Math.pow(10, 4 + 2 * random.nextDouble());
            roughness[i] = 2e-3 * random.nextDouble();
            boost[i] = 150e3 * random.nextDouble();
            effect[i] = 0.5 + 3 * random.nextDouble();
            double bore = 0.05 + 0.05 * random.nextDouble();
            pipe[i] = new Pipe(bore, 3 * random.nextDouble(), Pipe.STEEL, random.nextDouble());
        }
    }

    private int next() {
        next = (next + 1) % INPUTS;
        return next;
    }

    @Benchmark
    public double frictionFactor() {
        int i = next();
        return FrictionFactor.of(reynolds[i], roughness[i]);
    }

    @Benchmark
    public DuctFlow.State ductFlow() {
        int i = next();
        return DuctFlow.of(flow[i], temperature[i], 101e3, pipe[i], gas);
    }

    @Benchmark
    public void exhaustGas(Blackhole out) {
        int i = next();
        ExhaustGas burned = ExhaustGas.at(lambda[i]);
        out.consume(burned.cp(temperature[i]));
        out.consume(burned.gamma(temperature[i]));
        out.consume(burned.viscosity(temperature[i]));
    }

    @Benchmark
    public void gateBalance(Blackhole out) {
        double p = boost[next()];
        out.consume(CrackPressure.of(150 + p / 1e4, 0.05, 0.025, 120e3, 1.2, 110e3, 1));
        double surplus = GateLift.surplus(p, 0.05, 101e3 + 1.4 * p, 110e3, 0.025, 150);
        out.consume(GateLift.of(surplus, 8000, 0.012));
        out.consume(GateLift.stopForce(surplus, 8000, 0.012));
    }

    @Benchmark
    public double sampleSize() {
        return new RunsNeeded.Plan(effect[next()], 0.95, false, false).runs(0.8);
    }

    static List<Measure> measure() throws RunnerException {
        List<Measure> measures = new ArrayList<>();
        for (Call call : CALLS) {
            double time = nanoseconds(call.method);
            measures.add(
                    Double.isNaN(call.aim)
                            ? Measure.told(call.what, time, "%,.0f ns")
                            : Measure.atMost(call.what, time, call.aim, "%,.0f ns"));
        }
        return measures;
    }

    private static double nanoseconds(String method) throws RunnerException {
        RunResult result =
                new Runner(
                                new OptionsBuilder()
                                        .include(CallTimes.class.getName() + "." + method + "$")
                                        .forks(2)
                                        .warmupIterations(3)
                                        .warmupTime(TimeValue.milliseconds(500))
                                        .measurementIterations(5)
                                        .measurementTime(TimeValue.milliseconds(300))
                                        .verbosity(VerboseMode.SILENT)
                                        .build())
                        .runSingle();
        return result.getPrimaryResult().getStatistics().getPercentile(50);
    }
}

package sawstead.assembly;

import java.nio.file.Path;
import java.util.BitSet;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.station.unit.Units;

/**
 * Every tool on every fastener of a finished station.
 *
 * <pre>mvn -q -o -Pbench test-compile exec:exec -Dbench=ReachBenchmark</pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
public class ReachBenchmark {
  @Param({"lantern-alley"})
  private String model;

  private Stage stage;

  @Setup
  public void read() throws BriefException {
    stage =
        new Stage(Units.station(BriefReader.read(Path.of("models", model + ".yaml"))), 0.05);
  }

  /** How many are reached; nothing is known from the last time. */
  @Benchmark
  public int reach() {
    Reach reach = new Reach(stage, Toolbox.of(stage.station().brief().tools()));
    BitSet all = stage.all();
    int reached = 0;
    for (int f = 0; f < stage.fasteners().size(); f++) {
      reached += reach.use(f, all).isPresent() ? 1 : 0;
    }
    return reached;
  }
}

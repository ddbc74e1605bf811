package sawstead.check;

import java.nio.file.Path;
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
import sawstead.assembly.Assembly;
import sawstead.assembly.BuildPlan;
import sawstead.brief.Brief;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.station.Station;
import sawstead.station.unit.Units;

/**
 * What happens while a slider is dragged: a station is designed, its order of building searched,
 * and everything inspected.
 *
 * <pre>mvn -q -o -Pbench test-compile exec:exec -Dbench=StationBenchmark</pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
public class StationBenchmark {
  @Param({"lantern-alley"})
  private String model;

  private Brief brief;
  private Station station;

  @Setup
  public void read() throws BriefException {
    brief = BriefReader.read(Path.of("models", model + ".yaml"));
    station = Units.station(brief);
  }

  @Benchmark
  public Station design() {
    return Units.station(brief);
  }

  /** The order search with every fastener's reach. */
  @Benchmark
  public BuildPlan order() {
    return Assembly.plan(station, 0.05);
  }

  @Benchmark
  public Report inspect() {
    return Inspector.inspect(station);
  }

  @Benchmark
  public Report designAndInspect() {
    return Inspector.inspect(Units.station(brief));
  }
}

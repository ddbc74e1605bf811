package sawstead.export.report;

import java.io.IOException;
import sawstead.check.Driving;
import sawstead.check.Report;
import sawstead.joinery.Fastener;
import sawstead.station.Station;

/** {@code steps} and {@code fasteners}. */
final class BuildSection {
  private BuildSection() {}

  static void writeSteps(Station station, Json json) throws IOException {
    json.objects(
        "steps",
        station.steps(),
        step -> {
          json.whole("number", step.number());
          json.texts("places", step.places());
          json.text("fixing", step.fixing());
          json.vec("direction", step.direction());
          json.texts("cautions", step.cautions());
        });
  }

  static void writeFasteners(Report report, Json json) throws IOException {
    json.objects("fasteners", report.drivings(), driving -> write(driving, json));
  }

  private static void write(Driving driving, Json json) throws IOException {
    Fastener fastener = driving.fastener();
    json.text("id", fastener.id());
    json.text("kind", fastener.kind().word());
    json.texts("joins", fastener.joins());
    json.vec("at", fastener.at());
    json.vec("axis", fastener.axis());
    json.number("length", fastener.length());
    json.number("diameter", fastener.diameter());
    json.number("pilot", fastener.pilot());
    json.whole("step", driving.step());
    json.truth("reachable", driving.reachable());
    json.number("head", fastener.headDiameter());
    json.truth("glued", fastener.glued());
    json.text("joint", fastener.joint());
  }
}

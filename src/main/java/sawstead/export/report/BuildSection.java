package sawstead.export.report;

import java.io.IOException;
import sawstead.assembly.BuildPlan;
import sawstead.assembly.BuildStep;
import sawstead.assembly.Driving;
import sawstead.assembly.ToolUse;
import sawstead.check.Report;
import sawstead.joinery.Fastener;

/** {@code steps}, {@code fasteners} and {@code exits}. */
final class BuildSection {
  private BuildSection() {}

  static void writeSteps(BuildPlan plan, Json json) throws IOException {
    json.objects("steps", plan.steps(), step -> write(step, json));
  }

  private static void write(BuildStep step, Json json) throws IOException {
    json.whole("number", step.number());
    json.text("name", step.name());
    json.texts("places", step.places());
    json.text("fixing", step.fixing());
    json.vec("direction", step.direction());
    json.texts("cautions", step.cautions());
    json.list("path", step.path(), json::point);
    json.objects(
        "bench",
        step.bench(),
        turn -> {
          json.texts("places", turn.places());
          json.vec("direction", turn.direction());
          json.texts("fasteners", turn.fasteners());
        });
    json.texts("tools", step.tools());
    json.number("mass", step.mass());
    json.whole("hands", step.hands());
  }

  static void writeExits(BuildPlan plan, Json json) throws IOException {
    json.objects(
        "exits",
        plan.exits(),
        exit -> {
          json.text("id", exit.id());
          json.text("verdict", exit.verdict().word());
          json.list("path", exit.path(), json::point);
          json.texts("first", exit.first());
          if (Double.isFinite(exit.least())) {
            json.number("leastClearance", exit.least());
          } else {
            json.nothing("leastClearance");
          }
          json.number("tilt", exit.tilt());
          json.texts("obstacles", exit.obstacles());
          if (Double.isFinite(exit.lacks())) {
            json.number("lacks", exit.lacks());
          } else {
            json.nothing("lacks");
          }
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
    if (driving.use().isPresent()) {
      writeUse(driving.use().get(), json);
    } else {
      json.texts("inTheWay", driving.inTheWay());
    }
    json.number("head", fastener.headDiameter());
    json.truth("glued", fastener.glued());
    json.text("joint", fastener.joint());
  }

  private static void writeUse(ToolUse use, Json json) throws IOException {
    json.openObject("tool");
    json.text("name", use.tool().word());
    json.number("angle", use.angle());
    if (use.grip().isPresent()) {
      json.vec("grip", use.grip().get());
    }
    if (use.open().isPresent()) {
      json.text("open", use.open().get());
    }
    json.close();
  }
}

package sawstead.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sawstead.check.Report;
import sawstead.preview.PreviewException;
import sawstead.preview.look.Magnifier;
import sawstead.preview.picture.PictureFile;
import sawstead.preview.picture.PictureWish;
import sawstead.preview.picture.PictureWriter;
import sawstead.preview.scene.Arrangement;
import sawstead.preview.scene.Stance;
import sawstead.preview.walk.WalkWindow;
import sawstead.preview.window.WindowPicture;

/** {@code picture FILE --view V --out x.png}: draws a brief's station without a window. */
@Command(
    name = "picture",
    mixinStandardHelpOptions = true,
    description = "Draws the station of a brief to a PNG file, without opening a window.",
    footer = {"", "Exit codes: 0 fine, 2 bad input or no display, 3 a fault of the program."})
final class PictureCommand implements Callable<Integer> {
  private static final Pattern SIZE = Pattern.compile("([0-9]{1,5})x([0-9]{1,5})");

  private final Streams streams;

  @Parameters(paramLabel = "FILE", description = "The brief, a YAML file.")
  private Path file;

  @Option(
      names = "--of",
      paramLabel = "WHAT",
      defaultValue = "station",
      description = {
        "What to draw: station; window, as `show` has it when one asks what mends the worst finding;",
        "or interview, as `walk --window` has it at the question that is next."
      })
  private String of;

  @Option(
      names = "--view",
      paramLabel = "VIEW",
      defaultValue = "corner",
      description = "Where to stand: infeed, outfeed, left, right, above or corner.")
  private String view;

  @Option(
      names = "--out",
      paramLabel = "PNG",
      description = "The file to write; <name of the station>-<view>.png when left out.")
  private Path out;

  @Option(
      names = "--size",
      paramLabel = "WxH",
      defaultValue = "1600x1000",
      description = "Width and height in pixels, 64 to 4096 each.")
  private String size;

  @Option(names = "--dark", description = "Dark look.")
  private boolean dark;

  @Option(
      names = "--times",
      paramLabel = "N",
      defaultValue = "1",
      description =
          "Show window or interview N times as large, as Ctrl and + do: 0.8 to 2, to the nearest step.")
  private double times;

  @Option(names = "--see-through", description = "See through saw, vac and other envelopes.")
  private boolean seeThrough;

  @Option(
      names = "--spread",
      paramLabel = "SHARE",
      defaultValue = "0",
      description = "Spread the parts along the directions in which they come: 0 to 1.")
  private double spread;

  PictureCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws Refusal {
    PictureWish wish = wish();
    Path target;
    try (Progress progress = Progress.on(streams)) {
      if (!of.equals("station")) {
        return drawn(other(wish, progress));
      }
      Report report = Bench.report(file, progress);
      String slug = report.station().brief().slug();
      target = out != null ? out : Path.of(slug + "-" + view + ".png");
      progress.begin("drawing " + target);
      PictureWriter.write(report, wish, target);
    } catch (PreviewException e) {
      throw new Refusal(List.of(new Trouble(e.getMessage(), e.where(), e.remedy())));
    }
    return drawn(target);
  }

  private Integer drawn(Path target) {
    streams.outText().println("drawn: " + target);
    return ExitCode.FINE;
  }

  /** Draws the window or the interview. */
  private Path other(PictureWish wish, Progress progress) throws Refusal {
    boolean window = of.equals("window");
    if (!window && !of.equals("interview")) {
      throw bad("there is no picture of " + of, "--of", "write station, window or interview");
    }
    if (window && !Files.isRegularFile(file)) {
      throw bad("there is no such file", file.toString(), "check the name");
    }
    Path target = out != null ? out : Path.of(of + ".png");
    progress.begin("drawing " + target);
    PictureFile.write(
        window
            ? WindowPicture.draw(file, wish.width(), wish.height(), wish.dark(), times)
            : WalkWindow.draw(file, wish.width(), wish.height(), wish.dark(), times),
        target);
    return target;
  }

  private PictureWish wish() throws Refusal {
    Optional<Stance> stance = Stance.of(view);
    if (stance.isEmpty()) {
      String views = String.join(", ", Stream.of(Stance.values()).map(Stance::word).toList());
      throw bad("there is no view " + view, "--view", "write one of " + views);
    }
    Matcher matcher = SIZE.matcher(size);
    if (!matcher.matches()) {
      throw bad("`" + size + "` is no size", "--size", "write it as 1600x1000");
    }
    if (!(spread >= 0 && spread <= 1)) {
      throw bad("the parts cannot be spread by " + spread, "--spread", "write 0 to 1");
    }
    if (!(times >= Magnifier.LEAST && times <= Magnifier.MOST)) {
      throw bad("it cannot be shown " + times + " times as large", "--times", "write 0.8 to 2");
    }
    if (times != 1 && of.equals("station")) {
      throw bad("only window and interview have letters to show larger", "--times", "use --size");
    }
    try {
      return new PictureWish(
          stance.get(),
          Integer.parseInt(matcher.group(1)),
          Integer.parseInt(matcher.group(2)),
          dark,
          seeThrough,
          Arrangement.REST.spread(spread));
    } catch (IllegalArgumentException e) {
      throw bad(e.getMessage(), "--size " + size, "write it as 1600x1000");
    }
  }

  private static Refusal bad(String what, String where, String remedy) {
    return new Refusal(List.of(new Trouble(what, where, remedy)));
  }
}

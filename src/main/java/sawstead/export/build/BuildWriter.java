package sawstead.export.build;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import sawstead.check.Report;
import sawstead.export.OutputFolder;
import sawstead.export.stl.StlForm;

/** Writes everything that a build leaves in a folder. */
public final class BuildWriter {
  private BuildWriter() {}

  /**
   * Writes a folder, or replaces the one that an earlier build wrote there.
   *
   * @param form of the STL files
   * @param more writes files of rooms that this one does not know, last
   * @param opened is told the relative path of each file when it is begun
   * @throws sawstead.export.ExportException when the folder cannot be written; what stood there is
   *     then unchanged
   */
  public static void write(
      Report report,
      Path folder,
      StlForm form,
      OutputFolder.Contents more,
      Consumer<String> opened) {
    List<Exporter> exporters =
        List.of(new StlExporter(form), new DxfExporter(), new ReportExporter());
    OutputFolder.at(folder)
        .write(
            draft -> {
              draft.watch(opened);
              for (Exporter exporter : exporters) {
                exporter.write(report, draft);
              }
              more.writeTo(draft);
            });
  }
}

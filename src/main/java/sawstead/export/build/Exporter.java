package sawstead.export.build;

import java.io.IOException;
import sawstead.check.Report;
import sawstead.export.Draft;

/** Writes the files of one format into the folder of a build. */
interface Exporter {
  void write(Report report, Draft folder) throws IOException;
}

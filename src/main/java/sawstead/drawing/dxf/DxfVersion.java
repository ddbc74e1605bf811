package sawstead.drawing.dxf;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** The versions of the format that we write (REF-FIL-03, REF-FIL-08). */
public enum DxfVersion {
  /** The oldest still in use: no light polylines, no handles, capitals only in layer names. */
  R12("AC1009", Charset.forName("windows-1252")),
  /** What nearly everything reads; the default. */
  R2000("AC1015", Charset.forName("windows-1252")),
  /** Text as UTF-8. */
  R2013("AC1027", StandardCharsets.UTF_8);

  private final String code;
  private final Charset charset;

  DxfVersion(String code, Charset charset) {
    this.code = code;
    this.charset = charset;
  }

  String code() {
    return code;
  }

  Charset charset() {
    return charset;
  }

  /** Whether records carry handles, owners and subclass markers, and the file all its tables. */
  boolean isLinked() {
    return this != R12;
  }
}

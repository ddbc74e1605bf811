package sawstead.layout;

import java.util.List;

/** A list or request that cannot be cut; carries every complaint found. */
public final class CutRequestException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Complaint> complaints;

  /** Made from at least one complaint. */
  public CutRequestException(List<Complaint> complaints) {
    super(complaints.get(0).what());
    this.complaints = List.copyOf(complaints);
  }

  /** Made from one complaint. */
  public CutRequestException(Complaint complaint) {
    this(List.of(complaint));
  }

  /** All complaints, in the order of the list. */
  public List<Complaint> complaints() {
    return complaints;
  }
}

package sawstead.solid;

import java.util.LinkedHashMap;
import java.util.Map;

/** A map that forgets what has not been asked for the longest. */
final class LastUsed<K, V> extends LinkedHashMap<K, V> {
  private static final long serialVersionUID = 1L;

  private final int kept;

  LastUsed(int kept) {
    super(16, 0.75f, true);
    this.kept = kept;
  }

  @Override
  protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
    return size() > kept;
  }
}

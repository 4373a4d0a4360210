package org.flexwright.shells.solved;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What prepared parts remember: a bounded store that forgets what was asked for longest ago. Every
 * entry is a function of its key alone, so forgetting and asking again, or asking in another order,
 * changes no figure. Thread-safe.
 */
final class Store {

  private static final int MOST = 1024;

  private final Map<Object, Object> known =
      new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, Object> eldest) {
          return size() > MOST;
        }
      };

  synchronized <T> Optional<T> get(Object key, Class<T> kind) {
    @Nullable Object value = known.get(key);
    return Optional.ofNullable(value).map(kind::cast);
  }

  synchronized void put(Object key, Object value) {
    known.put(key, value);
  }

  synchronized int size() {
    return known.size();
  }
}

package sawstead.preview.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

class LatestTest {
  @Test
  void ask_manyTimes_answersTheNewestOnly() throws InterruptedException {
    List<Integer> answered = Collections.synchronizedList(new ArrayList<>());
    CountDownLatch done = new CountDownLatch(1);
    try (Latest latest = new Latest(200, LatestTest::fails)) {
      for (int i = 0; i < 20; i++) {
        int number = i;
        latest.ask(
            wanted -> {
              answered.add(number);
              done.countDown();
            });
      }
      assertTrue(done.await(30, TimeUnit.SECONDS));
    }
    assertEquals(List.of(19), answered);
  }

  @Test
  void askNow_doesNotWaitUntilItIsQuiet() throws InterruptedException {
    CountDownLatch done = new CountDownLatch(1);
    try (Latest latest = new Latest(600_000, LatestTest::fails)) {
      latest.askNow(wanted -> done.countDown(), wanted -> {});
      assertTrue(done.await(30, TimeUnit.SECONDS));
    }
  }

  @Test
  void askNow_again_passesOverWhatOnlyTheOlderWouldDoWhenQuiet() throws InterruptedException {
    List<String> done = Collections.synchronizedList(new ArrayList<>());
    CountDownLatch quiet = new CountDownLatch(1);
    CountDownLatch first = new CountDownLatch(1);
    try (Latest latest = new Latest(200, LatestTest::fails)) {
      latest.askNow(wanted -> first.countDown(), wanted -> done.add("older"));
      assertTrue(first.await(30, TimeUnit.SECONDS));
      latest.askNow(
          wanted -> done.add("newer at once"),
          wanted -> {
            done.add("newer when quiet");
            quiet.countDown();
          });
      assertTrue(quiet.await(30, TimeUnit.SECONDS));
    }
    assertEquals(List.of("newer at once", "newer when quiet"), done);
  }

  @Test
  void ask_whileAtWork_tellsTheOlderWorkThatItIsNotWanted() throws InterruptedException {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch asked = new CountDownLatch(1);
    CountDownLatch done = new CountDownLatch(2);
    AtomicBoolean stillWanted = new AtomicBoolean(true);
    try (Latest latest = new Latest(0, LatestTest::fails)) {
      latest.ask(
          wanted -> {
            begun.countDown();
            try {
              asked.await(30, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
              Thread.currentThread().interrupt();
            }
            stillWanted.set(wanted.getAsBoolean());
            done.countDown();
          });
      assertTrue(begun.await(30, TimeUnit.SECONDS));
      latest.ask(wanted -> done.countDown());
      asked.countDown();
      assertTrue(done.await(30, TimeUnit.SECONDS));
    }
    assertFalse(stillWanted.get());
  }

  @Test
  void ask_ofWorkThatThrows_tellsOfIt_andGoesOn() throws InterruptedException {
    List<RuntimeException> told = Collections.synchronizedList(new ArrayList<>());
    CountDownLatch done = new CountDownLatch(1);
    RuntimeException fault = new IllegalStateException("on purpose");
    try (Latest latest = new Latest(0, told::add)) {
      CountDownLatch thrown = new CountDownLatch(1);
      latest.ask(
          wanted -> {
            thrown.countDown();
            throw fault;
          });
      assertTrue(thrown.await(30, TimeUnit.SECONDS));
      latest.ask(wanted -> done.countDown());
      assertTrue(done.await(30, TimeUnit.SECONDS));
    }
    assertEquals(List.of(fault), told);
  }

  @Test
  void ask_afterClosing_isPassedOver() {
    List<String> done = Collections.synchronizedList(new ArrayList<>());
    Latest latest = new Latest(0, LatestTest::fails);
    latest.close();
    latest.ask(wanted -> done.add("asked"));
    latest.askNow(wanted -> done.add("now"), wanted -> done.add("quiet"));
    assertEquals(List.of(), done);
  }

  private static void fails(RuntimeException fault) {
    throw fault;
  }
}

package leafturn.web;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests of a trial of two yards, served afresh for each of them. */
abstract class TwoYardsSite {
  @TempDir Path folder;
  TwoYards yards;
  PeopledSite site;
  Browser adviser;

  @BeforeEach
  void open() {
    yards = new TwoYards(folder);
    site = yards.site;
    adviser = yards.adviser;
  }

  @AfterEach
  void close() {
    yards.close();
  }
}

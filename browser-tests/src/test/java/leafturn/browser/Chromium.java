package leafturn.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** The Chromium on the PATH, never one that is downloaded. */
final class Chromium implements AutoCloseable {
  private static final List<String> ARGUMENTS =
      List.of(
          "--no-sandbox",
          "--disable-quic",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");

  /** What is to appear may be slow on a loaded machine; what is to stay away is asked at once. */
  private static final double LONGEST_WAIT_MS = 60_000;

  private final Playwright playwright;
  private final Browser browser;

  /**
   * @param further arguments beside the usual ones
   */
  Chromium(String... further) {
    List<String> arguments = new ArrayList<>(ARGUMENTS);
    arguments.addAll(List.of(further));
    PlaywrightAssertions.setDefaultAssertionTimeout(LONGEST_WAIT_MS);
    playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions().setExecutablePath(onThePath()).setArgs(arguments));
  }

  /** A fresh window of a size, in a light or dark scheme. */
  BrowserContext window(Window window) {
    return browser.newContext(options(window));
  }

  /** A fresh window of a size, with further wishes. */
  BrowserContext window(Window window, Browser.NewContextOptions wishes) {
    return browser.newContext(options(window, wishes));
  }

  /** A fresh window that runs no script. */
  BrowserContext windowWithoutScript(Window window) {
    return browser.newContext(options(window).setJavaScriptEnabled(false));
  }

  /** A fresh window on a screen for fingers. */
  BrowserContext windowForFingers(Window window) {
    return browser.newContext(options(window).setHasTouch(true));
  }

  /** The browser of a person who comes back: what sites keep in it lies in a folder. */
  BrowserContext returning(Path folder, String... arguments) {
    List<String> all = new ArrayList<>(ARGUMENTS);
    all.addAll(List.of(arguments));
    return playwright
        .chromium()
        .launchPersistentContext(
            folder,
            new BrowserType.LaunchPersistentContextOptions()
                .setExecutablePath(onThePath())
                .setViewportSize(Window.PHONE.widthPx(), Window.PHONE.heightPx())
                .setArgs(all));
  }

  private static Browser.NewContextOptions options(Window window) {
    return options(window, new Browser.NewContextOptions());
  }

  private static Browser.NewContextOptions options(
      Window window, Browser.NewContextOptions wishes) {
    return wishes
        .setViewportSize(window.widthPx(), window.heightPx())
        .setColorScheme(window.dark() ? ColorScheme.DARK : ColorScheme.LIGHT);
  }

  private static Path onThePath() {
    return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
        .map(folder -> Path.of(folder, "chromium"))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "the pages are tested in Chromium, and no chromium is on the PATH"));
  }

  @Override
  public void close() {
    playwright.close();
  }

  /** Size and scheme of a window. */
  record Window(int widthPx, int heightPx, boolean dark) {
    static final Window PHONE = new Window(390, 844, false);
    static final Window PHONE_DARK = new Window(390, 844, true);
    static final Window DESK = new Window(1280, 800, false);
    static final Window DESK_DARK = new Window(1280, 800, true);
  }

  /** Kills the browser that keeps its things in a folder, as a phone out of power would. */
  static void kill(Path folder) {
    List<ProcessHandle> processes =
        ProcessHandle.allProcesses()
            .filter(process -> process.info().commandLine().orElse("").contains(folder.toString()))
            .toList();
    processes.forEach(ProcessHandle::destroyForcibly);
    processes.forEach(process -> process.onExit().join());
  }
}

package leafturn;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.pattern.TargetLengthBasedClassNameAbbreviator;
import ch.qos.logback.classic.spi.Configurator;
import ch.qos.logback.classic.spi.ConfiguratorRank;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.ThrowableProxyUtil;
import ch.qos.logback.core.ConsoleAppender;
import ch.qos.logback.core.Layout;
import ch.qos.logback.core.LayoutBase;
import ch.qos.logback.core.encoder.LayoutWrappingEncoder;
import ch.qos.logback.core.joran.spi.ConsoleTarget;
import ch.qos.logback.core.spi.ContextAwareBase;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/**
 * What goes to the log: warnings and faults, and never on standard output. Set up here rather than
 * by a file of settings, whose reading takes a tenth of a start.
 */
@ConfiguratorRank(ConfiguratorRank.CUSTOM_NORMAL_PRIORITY)
public final class Logging extends ContextAwareBase implements Configurator {
  @Override
  public ExecutionStatus configure(LoggerContext context) {
    Logger everything = context.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
    everything.setLevel(Level.WARN);
    everything.addAppender(terminal(context, new Sentence()));
    // A fault of a page is reported to nobody but the log, so it keeps its trace.
    Logger pages = context.getLogger("leafturn.web");
    pages.setAdditive(false);
    pages.addAppender(terminal(context, new Fault()));
    // The server tells its faults itself; of a taken port the command says all there is to say.
    context.getLogger("io.javalin.Javalin").setLevel(Level.OFF);
    // The migrations tell what fails by an exception; the rest of what they say is for their own
    // people.
    context.getLogger("org.flywaydb").setLevel(Level.OFF);
    context.getLogger("com.zaxxer.hikari").setLevel(Level.OFF);
    // The writer of PDF tells of fonts it does not use.
    context.getLogger("org.apache.pdfbox").setLevel(Level.ERROR);
    context.getLogger("org.apache.fontbox").setLevel(Level.ERROR);
    return ExecutionStatus.DO_NOT_INVOKE_NEXT_IF_ANY;
  }

  private static ConsoleAppender<ILoggingEvent> terminal(
      LoggerContext context, Layout<ILoggingEvent> layout) {
    layout.setContext(context);
    layout.start();
    LayoutWrappingEncoder<ILoggingEvent> encoder = new LayoutWrappingEncoder<>();
    encoder.setContext(context);
    encoder.setLayout(layout);
    encoder.start();
    ConsoleAppender<ILoggingEvent> terminal = new ConsoleAppender<>();
    terminal.setContext(context);
    terminal.setTarget(ConsoleTarget.SystemErr.getName());
    terminal.setEncoder(encoder);
    terminal.start();
    return terminal;
  }

  /** Who says what, in a line. */
  private static class Sentence extends LayoutBase<ILoggingEvent> {
    private final TargetLengthBasedClassNameAbbreviator names =
        new TargetLengthBasedClassNameAbbreviator(20);

    @Override
    public String doLayout(ILoggingEvent event) {
      return "%s %s %s%n"
          .formatted(
              event.getLevel(),
              names.abbreviate(event.getLoggerName()),
              event.getFormattedMessage());
    }
  }

  /** When, who and what, and the trace. */
  private static final class Fault extends Sentence {
    @Override
    public String doLayout(ILoggingEvent event) {
      String time =
          DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
              event.getInstant().truncatedTo(ChronoUnit.SECONDS).atZone(ZoneId.systemDefault()));
      return time
          + " "
          + super.doLayout(event)
          + ThrowableProxyUtil.asString(event.getThrowableProxy());
    }
  }
}

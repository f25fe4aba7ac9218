package leafturn;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.regex.Pattern;

/** The walls of the house: which room may use which, and what a room may not reach for. */
@AnalyzeClasses(
    packages = {"leafturn", "gg.jte.generated"},
    importOptions = {DoNotIncludeTests.class, HouseWallsTest.DoNotIncludeLentTestTools.class})
class HouseWallsTest {
  /** Test tools that a room lends to the tests of others come in a jar of their own. */
  static final class DoNotIncludeLentTestTools implements ImportOption {
    @Override
    public boolean includes(Location location) {
      return !location.contains("-tests.jar");
    }
  }

  private static final String[] ROOMS_THAT_COMPUTE = {
    "leafturn.quantity..", "leafturn.model..", "leafturn.trials..", "leafturn.advice.."
  };

  private static final String CLOCK =
      "java\\.time\\..*\\.now\\((java\\.time\\.ZoneId)?\\)"
          + "|java\\.time\\.Clock\\.(system|tick(Millis|Seconds|Minutes)).*"
          + "|java\\.time\\.ZoneId\\.systemDefault.*"
          + "|java\\.lang\\.System\\.(currentTimeMillis|nanoTime).*"
          + "|java\\.util\\.Date\\.<init>\\(\\)"
          + "|java\\.util\\.Calendar\\.getInstance.*";

  private static final String UNSEEDED =
      "java\\.util\\.(Random|SplittableRandom)\\.<init>\\(\\)"
          + "|java\\.util\\.concurrent\\.ThreadLocalRandom\\.current.*"
          + "|java\\.util\\.Collections\\.shuffle\\(java\\.util\\.List\\)"
          + "|java\\.util\\.random\\..*\\.(getDefault|of|create)\\((java\\.lang\\.String)?\\)"
          + "|java\\.util\\.UUID\\.randomUUID.*"
          + "|java\\.lang\\.(Math|StrictMath)\\.random.*";

  @ArchTest
  static final ArchRule roomsUseOnlyTheRoomsBelowThem =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("quantity")
          .definedBy("leafturn.quantity..")
          .layer("model")
          .definedBy("leafturn.model..")
          .layer("trials")
          .definedBy("leafturn.trials..")
          .layer("advice")
          .definedBy("leafturn.advice..")
          .layer("records")
          .definedBy("leafturn.records..")
          .layer("reports")
          .definedBy("leafturn.reports..")
          .layer("web")
          .definedBy("leafturn.web..", "gg.jte.generated..")
          .layer("cli")
          .definedBy("leafturn.cli..")
          .layer("main")
          .definedBy("leafturn")
          .withOptionalLayers(true)
          .whereLayer("main")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("web")
          .mayOnlyBeAccessedByLayers("main")
          .whereLayer("cli")
          .mayOnlyBeAccessedByLayers("main")
          .whereLayer("records")
          .mayOnlyBeAccessedByLayers("reports", "web", "cli", "main")
          .whereLayer("reports")
          .mayOnlyBeAccessedByLayers("web", "cli", "main")
          .whereLayer("advice")
          .mayOnlyBeAccessedByLayers("records", "reports", "web", "cli", "main")
          .whereLayer("trials")
          .mayOnlyBeAccessedByLayers("advice", "records", "reports", "web", "cli", "main")
          .whereLayer("model")
          .mayOnlyBeAccessedByLayers("advice", "records", "reports", "web", "cli", "main");

  @ArchTest
  static final ArchRule noRoomIsEnteredInACircle =
      slices().matching("leafturn.(*).(*)..").should().beFreeOfCycles().allowEmptyShould(true);

  @ArchTest
  static final ArchRule scienceUsesNothingButItselfAndItsLibraries =
      classes()
          .that()
          .resideInAnyPackage(ROOMS_THAT_COMPUTE)
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(
                  "leafturn.quantity..",
                  "leafturn.model..",
                  "leafturn.trials..",
                  "leafturn.advice..",
                  "java..",
                  "org.jspecify.annotations..",
                  "org.hipparchus..",
                  "org.locationtech.jts..",
                  "org.apache.commons.rng..",
                  "org.apache.commons.statistics..",
                  "org.ojalgo..",
                  ""))
          .as("quantity, model, trials and advice use the JDK and numerical libraries only");

  @ArchTest
  static final ArchRule computingRoomsOpenNoFileDatabaseOrSocket =
      noClasses()
          .that()
          .resideInAnyPackage(ROOMS_THAT_COMPUTE)
          .should()
          .dependOnClassesThat(
              resideInAnyPackage("java.nio.file..", "java.sql..", "javax.sql..", "java.net..")
                  .or(type(java.io.File.class))
                  .or(nameMatching("java\\.io\\.(File(Input|Output)Stream|File(Reader|Writer))"))
                  .or(type(java.io.RandomAccessFile.class)))
          .as("quantity, model, trials and advice open no file, database or socket");

  @ArchTest
  static final ArchRule computingRoomsReadNoClock =
      noClasses()
          .that()
          .resideInAnyPackage(ROOMS_THAT_COMPUTE)
          .should()
          .accessTargetWhere(reaching(CLOCK))
          .as("quantity, model, trials and advice read no clock: the day is an argument");

  @ArchTest
  static final ArchRule computingRoomsDrawNoUnseededNumber =
      noClasses()
          .that()
          .resideInAnyPackage(ROOMS_THAT_COMPUTE)
          .should()
          .accessTargetWhere(reaching(UNSEEDED))
          .as("quantity, model, trials and advice draw only from a seed that was handed over");

  @ArchTest
  static final ArchRule nobodyPrintsBesideTheCommands =
      noClasses()
          .that()
          .resideOutsideOfPackages("leafturn.cli..", "leafturn")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .as("only the commands write to the terminal");

  @ArchTest
  static final ArchRule oneLoggerOnly =
      noClasses()
          .should()
          .dependOnClassesThat(
              resideInAnyPackage("java.util.logging..", "org.apache.commons.logging.."))
          .as("messages go through SLF4J");

  @ArchTest
  static final ArchRule noReflectionOfOurOwn =
      noClasses()
          .that(resideInAnyPackage("leafturn.."))
          .should()
          .dependOnClassesThat(resideInAnyPackage("java.lang.reflect..").and(notThrowOrArrayType()))
          .orShould()
          .callMethod(Class.class, "forName", String.class)
          .as("no reflection of our own");

  /** Calls and method references whose target's full name is of this shape. */
  private static DescribedPredicate<JavaAccess<?>> reaching(String fullNamePattern) {
    Pattern pattern = Pattern.compile(fullNamePattern);
    return DescribedPredicate.describe(
        "reaching " + fullNamePattern,
        access -> pattern.matcher(access.getTarget().getFullName()).matches());
  }

  private static DescribedPredicate<JavaClass> notThrowOrArrayType() {
    return DescribedPredicate.not(
        nameMatching("java\\.lang\\.reflect\\.(Array|UndeclaredThrowableException)"));
  }
}

package leafturn.model;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.UnknownBlockTagTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import leafturn.quantity.PublishedCheck;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Every public function of the science rooms names its source, and every key named there or in a
 * check file stands in the list of references.
 */
class SourceTagTest {
  private static final Path REFERENCES = Path.of("..", "docs", "references.md");
  private static final Path SCIENCE = Path.of("src", "main", "java", "leafturn", "model");
  private static final Path CHECKS = Path.of("src", "test", "resources", "checks");
  private static final List<String> ROOMS =
      List.of("weather", "weather/hourly", "water", "grass", "clippings", "soil");

  private static final Set<String> WITHOUT_PUBLICATION =
      Set.of("common practice, no source", "our judgement", "definition");

  private static final Pattern LISTED = Pattern.compile("(?m)^- \\*\\*([a-z0-9]+)\\*\\*");
  private static final Pattern KEY_WITH_YEAR = Pattern.compile("\\b[a-z]+(19|20)\\d\\d[a-z]*\\b");
  private static final Pattern FIRST_WORD = Pattern.compile("^[a-z0-9]+");

  @Test
  void everyPublicScientificFunctionNamesItsSource() throws IOException {
    Parsed parsed = parsed();
    FunctionScanner scanner = new FunctionScanner(parsed.docs(), keys());
    parsed.files().forEach(file -> scanner.scan(file, null));
    assertThat(scanner.functions).hasSizeGreaterThan(50);
    assertThat(scanner.faults).isEmpty();
  }

  @Test
  void everyKeyInACheckFileIsListed() throws IOException {
    Set<String> keys = keys();
    List<String> faults = new ArrayList<>();
    try (Stream<Path> files = Files.list(CHECKS)) {
      for (Path file : files.filter(path -> path.toString().endsWith(".csv")).toList()) {
        String name = String.valueOf(file.getFileName());
        for (PublishedCheck check : PublishedCheck.of(SourceTagTest.class, name)) {
          unlisted(check.text("source"), keys).forEach(key -> faults.add(key + " in " + check));
        }
      }
    }
    assertThat(faults).isEmpty();
  }

  private static Set<String> keys() throws IOException {
    return LISTED
        .matcher(Files.readString(REFERENCES))
        .results()
        .map(result -> result.group(1))
        .collect(Collectors.toSet());
  }

  private static List<String> unlisted(String source, Set<String> keys) {
    return KEY_WITH_YEAR
        .matcher(source)
        .results()
        .map(MatchResult::group)
        .filter(key -> !keys.contains(key))
        .toList();
  }

  /** The science rooms' files as the compiler reads them, with their documentation comments. */
  private record Parsed(DocTrees docs, List<CompilationUnitTree> files) {}

  private static Parsed parsed() throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    List<Path> paths = new ArrayList<>();
    for (String room : ROOMS) {
      try (Stream<Path> files = Files.list(SCIENCE.resolve(room))) {
        files.filter(path -> path.toString().endsWith(".java")).forEach(paths::add);
      }
    }
    StandardJavaFileManager manager =
        compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8);
    JavacTask task =
        (JavacTask)
            compiler.getTask(
                null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(paths));
    List<CompilationUnitTree> files = new ArrayList<>();
    task.parse().forEach(files::add);
    return new Parsed(DocTrees.instance(task), files);
  }

  /** Walks public types and collects their public static functions that return a double. */
  private static final class FunctionScanner extends TreePathScanner<Void, Void> {
    private final DocTrees docs;
    private final Set<String> keys;
    private final List<String> functions = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();

    FunctionScanner(DocTrees docs, Set<String> keys) {
      this.docs = docs;
      this.keys = keys;
    }

    @Override
    public Void visitClass(ClassTree type, Void nothing) {
      return type.getModifiers().getFlags().contains(Modifier.PUBLIC)
          ? super.visitClass(type, null)
          : null;
    }

    @Override
    public Void visitMethod(MethodTree method, Void nothing) {
      Set<Modifier> flags = method.getModifiers().getFlags();
      if (flags.contains(Modifier.PUBLIC)
          && flags.contains(Modifier.STATIC)
          && "double".equals(String.valueOf(method.getReturnType()))) {
        String name =
            getCurrentPath().getCompilationUnit().getSourceFile().getName()
                + ", "
                + method.getName();
        functions.add(name);
        fault(docs.getDocCommentTree(getCurrentPath())).ifPresent(f -> faults.add(name + f));
      }
      return null;
    }

    private Optional<String> fault(@Nullable DocCommentTree comment) {
      List<String> sources =
          comment == null
              ? List.of()
              : comment.getBlockTags().stream()
                  .filter(UnknownBlockTagTree.class::isInstance)
                  .map(UnknownBlockTagTree.class::cast)
                  .filter(tag -> tag.getTagName().equals("source"))
                  .map(tag -> tag.getContent().toString())
                  .toList();
      if (sources.size() != 1) {
        return Optional.of(" has " + sources.size() + " @source tags, but needs one");
      }
      String source = sources.get(0);
      Matcher first = FIRST_WORD.matcher(source);
      boolean known =
          WITHOUT_PUBLICATION.contains(source)
              || (first.find() && keys.contains(first.group()) && unlisted(source, keys).isEmpty());
      return known
          ? Optional.empty()
          : Optional.of(
              " names '%s', but docs/references.md has no such key; legal too are %s"
                  .formatted(source, WITHOUT_PUBLICATION));
    }
  }
}

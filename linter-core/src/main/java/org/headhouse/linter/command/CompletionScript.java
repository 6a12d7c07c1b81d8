package org.headhouse.linter.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.OutputFormat;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Word;

/**
 * The script that completes goals, options and their values. It is made of the options, goals and
 * rules that there are, so that it offers no word that is refused.
 */
final class CompletionScript {
  private static final String USUAL_NAME = "linter";

  /** What a shell takes for a name as it is. */
  private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9_.-]*");

  /**
   * Bash takes {@code --units=us} apart at the equals sign, and completes what comes after it; zsh
   * leaves it whole. Where nothing is offered, both complete the names of files.
   */
  private static final String SCRIPT =
      """
      # Completes the command {name} in bash. In zsh, first: autoload -U +X bashcompinit && bashcompinit
      {function}() {
        local current=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}
        local goal= option= value=$current head= words= IFS=$' \\t\\n'
        COMPREPLY=()
        if [[ $COMP_CWORD -gt 1 ]]; then
          case ${COMP_WORDS[1]} in
            {goals}) goal=${COMP_WORDS[1]} ;;
          esac
        fi
        if [[ $current == --*=* ]]; then
          option=${current%%=*} value=${current#*=} head=$option=
        elif [[ $current == = ]]; then
          option=$before value=
        elif [[ $before == = && $COMP_CWORD -gt 2 ]]; then
          option=${COMP_WORDS[COMP_CWORD-2]}
        else
          case $before in
            {valued}) option=$before ;;
          esac
        fi
        case $option in
          '')
            if [[ $current == -* ]]; then
              case $goal in
      {options}
              esac
            elif [[ $COMP_CWORD -eq 1 ]]; then
              words='{names}'
            elif [[ $goal == rules && $COMP_CWORD -eq 2 ]]; then
              words='{rules}'
            fi ;;
      {values}
        esac
        COMPREPLY=($(compgen -P "$head" -W "$words" -- "$value"))
        if [[ ${#COMPREPLY[@]} -eq 1 && "${COMPREPLY[*]}" == *= ]]; then
          type compopt >/dev/null 2>&1 && compopt -o nospace
        fi
      }
      complete -o default -F {function} {name}
      """;

  private final List<String> rules;

  private CompletionScript(List<String> rules) {
    this.rules = rules;
  }

  /**
   * The text of the script, whose lines end as bash takes them on any system.
   *
   * @param named what the command is called; none for the usual name
   */
  static String of(List<String> named, LinterMaker linters) throws UserError {
    if (named.size() > 1) {
      throw new UserError("completion is for one name of the command: call it once for each");
    }
    String name = named.isEmpty() ? USUAL_NAME : named.get(0);
    if (!NAME.matcher(name).matches()) {
      throw new UserError(
          "a command cannot be called \""
              + name
              + "\" here: use letters, digits, hyphens, dots and underscores, a letter first");
    }
    SiteLinter linter = linters.make(SiteLinter.builder());
    return new CompletionScript(linter.rules().stream().map(RuleDescriptor::id).toList())
        .text(name);
  }

  private String text(String name) {
    List<String> goals = Arrays.stream(Goal.values()).map(Goal::word).toList();
    return SCRIPT
        .replace("{goals}", String.join("|", goals))
        .replace("{valued}", valued())
        .replace("{options}", options())
        .replace("{values}", values())
        .replace("{names}", String.join(" ", goals))
        .replace("{rules}", String.join(" ", rules))
        .replace("{function}", "_" + name.replaceAll("[.-]", "_") + "_complete")
        .replace("{name}", name);
  }

  private static String valued() {
    return Arrays.stream(CommandOption.values())
        .filter(CommandOption::takesValue)
        .map(option -> "--" + option.word())
        .collect(Collectors.joining("|"));
  }

  /** For each goal; without one, those of check. */
  private static String options() {
    return Arrays.stream(Goal.values())
        .map(
            goal ->
                "          "
                    + (goal == Goal.CHECK ? "''|" : "")
                    + goal.word()
                    + ") words='"
                    + goal.options().stream()
                        .map(option -> "--" + option.word() + (option.takesValue() ? "=" : ""))
                        .collect(Collectors.joining(" "))
                    + "' ;;")
        .collect(Collectors.joining("\n"));
  }

  private String values() {
    List<String> cases = new ArrayList<>();
    for (CommandOption option : CommandOption.values()) {
      String words = String.join(" ", words(option));
      if (!words.isEmpty()) {
        cases.add("    --" + option.word() + ") words='" + words + "' ;;");
      }
    }
    cases.add("    *) return ;;");
    return String.join("\n", cases);
  }

  /** What an option can be, where that is one of a few words. */
  private List<String> words(CommandOption option) {
    return switch (option) {
      case FAIL_LEVEL, PRINT_LEVEL -> words(Level.values(), Level::word);
      case FORMAT -> words(OutputFormat.values(), OutputFormat::word);
      case FIXES -> words(FixKind.values(), FixKind::word);
      case UNITS -> words(Measure.values(), Measure::word);
      case PAPER -> words(Paper.values(), Paper::word);
      case PARITY -> words(Parity.values(), Word::word);
      case READINGS -> words(Reading.values(), Word::word);
      case SHIELDED -> List.of("true", "false");
      case RULE -> rules;
      default -> List.of();
    };
  }

  private static <T> List<String> words(T[] values, Function<T, String> word) {
    return Stream.of(values).map(word).toList();
  }
}

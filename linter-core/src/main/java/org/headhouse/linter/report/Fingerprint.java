package org.headhouse.linter.report;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Sha256;
import org.jspecify.annotations.Nullable;

/**
 * A short text that identifies a result from run to run, together with the rule, which SARIF has
 * beside it.
 */
final class Fingerprint {
  /** Its name in SARIF; the number changes with the way it is computed. */
  static final String NAME = "siteElement/v1";

  private static final int DIGITS = 32;

  private Fingerprint() {}

  static String of(Result result) {
    List<Identity> identities = result.identities();
    String file = result.location().file();
    return switch (identities.size()) {
      case 0 -> digest(file, result.logical());
      case 1 -> of(identities.get(0), file);
      default ->
          digest(identities.stream().map(one -> of(one, file)).sorted().toArray(String[]::new));
    };
  }

  /** The fingerprint of an identity; with the file where the id of the site is not known. */
  static String of(Identity identity, String file) {
    return digest(
        identity.site() == null ? file : "",
        identity.site(),
        identity.at(),
        identity.unit(),
        identity.value(),
        identity.graded() == null ? null : identity.graded().word(),
        identity.detail());
  }

  static String digest(@Nullable String... parts) {
    StringBuilder text = new StringBuilder();
    for (String part : parts) {
      text.append(part == null ? "-" : "+" + part).append('\0');
    }
    return Sha256.hex(text.toString().getBytes(UTF_8)).substring(0, DIGITS);
  }
}

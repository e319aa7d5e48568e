package org.footwell.electrical.load;

import static org.footwell.electrical.load.LoadFault.NETWORK_ENCODED;
import static org.footwell.electrical.load.LoadFault.NETWORK_OPERATOR_MISSING;
import static org.footwell.electrical.load.LoadFault.NETWORK_SINGLE_BAR;
import static org.footwell.electrical.load.LoadFault.NETWORK_SYNTAX;
import static org.footwell.electrical.load.LoadFault.NETWORK_TOO_DEEP;
import static org.footwell.electrical.load.LoadFault.NETWORK_TOO_LARGE;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.VoiceCoil;

/**
 * Reads circuit notation by recursive descent:
 *
 * <pre>
 * series   = parallel { "+" parallel }
 * parallel = part { "||" part }
 * part     = number | name | "(" series ")"
 * </pre>
 *
 * <p>Parallel binds tighter than series, as a product binds tighter than a sum. White space may
 * stand between any two of these, but never stands for an operator: a plus sign that got lost on
 * the way would otherwise hide a load that is too low.
 */
final class NetworkParser {

  /** More coils than any one output drives. */
  static final int MOST_COILS = 32;

  /** Depth of parentheses; bounds the recursion. */
  static final int DEEPEST = 64;

  /**
   * A number or a name as it stands in the text.
   *
   * @param character where it begins, from 1
   */
  record Token(String text, int character) {
    boolean isNumber() {
      return !Character.isLetter(text.charAt(0));
    }
  }

  private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?|\\.[0-9]+");
  private static final Pattern NAME = Pattern.compile(VoiceCoil.NAME);
  private static final Pattern ENCODED = Pattern.compile("%[0-9A-Fa-f]{2}");

  private final String text;
  private int next;
  private int coils;

  private NetworkParser(String text) {
    this.text = text;
  }

  static Network<Token> parse(String text) throws Unreadable {
    NetworkParser parser = new NetworkParser(text);
    Network<Token> network = parser.series(0);
    if (!parser.atEnd()) {
      throw parser.noOperator(Phrase.of(NetworkWords.OPERATOR_OR_END));
    }
    return network;
  }

  private Network<Token> series(int depth) throws Unreadable {
    List<Network<Token>> parts = new ArrayList<>();
    do {
      parts.add(parallel(depth));
    } while (skip("+"));
    return Network.series(parts);
  }

  private Network<Token> parallel(int depth) throws Unreadable {
    List<Network<Token>> parts = new ArrayList<>();
    do {
      parts.add(part(depth));
    } while (skip("||"));
    return Network.parallel(parts);
  }

  private Network<Token> part(int depth) throws Unreadable {
    skipSpace();
    int start = next;
    if (skip("(")) {
      return inParentheses(start, depth + 1);
    }
    if (!skip(NUMBER) && !skip(NAME)) {
      throw unexpected(Phrase.of(NetworkWords.PART));
    }
    if (++coils > MOST_COILS) {
      throw new Unreadable(NETWORK_TOO_LARGE, start + 1, null, Allowed.atMost(MOST_COILS, ""));
    }
    return Network.leaf(new Token(text.substring(start, next), start + 1));
  }

  private Network<Token> inParentheses(int open, int depth) throws Unreadable {
    if (depth > DEEPEST) {
      throw new Unreadable(NETWORK_TOO_DEEP, open + 1, null, Allowed.atMost(DEEPEST, ""));
    }
    Network<Token> inner = series(depth);
    if (!skip(")")) {
      throw noOperator(Phrase.of(NetworkWords.OPERATOR_OR_CLOSING).with("character", open + 1));
    }
    return inner;
  }

  /** Something other than an operator follows a part. */
  private Unreadable noOperator(Phrase expected) {
    int space = endOfPart();
    boolean lost = space < next && !atEnd() && startsPart();
    return lost
        ? new Unreadable(
            NETWORK_OPERATOR_MISSING, space + 1, null, Phrase.of(NetworkWords.OPERATOR))
        : unexpected(expected);
  }

  private int endOfPart() {
    int end = next;
    while (end > 0 && isSpace(text.charAt(end - 1))) {
      end--;
    }
    return end;
  }

  private boolean startsPart() {
    char c = text.charAt(next);
    return c == '(' || c == '.' || Character.isLetterOrDigit(c);
  }

  private Unreadable unexpected(Phrase expected) {
    if (atEnd()) {
      return new Unreadable(
          NETWORK_SYNTAX, text.length() + 1, Phrase.of(NetworkWords.THE_END), expected);
    }
    if (text.charAt(next) == '|' && !text.startsWith("||", next)) {
      return new Unreadable(NETWORK_SINGLE_BAR, next + 1, null, Phrase.of(NetworkWords.PARALLEL));
    }
    Matcher encoded = ENCODED.matcher(text).region(next, text.length());
    if (encoded.lookingAt()) {
      return new Unreadable(NETWORK_ENCODED, next + 1, character(encoded.group()), expected);
    }
    boolean comma = text.charAt(next) == ',';
    return new Unreadable(
        NETWORK_SYNTAX,
        next + 1,
        found(),
        comma ? Phrase.of(NetworkWords.WITH_POINT).with("expected", expected) : expected);
  }

  private Phrase found() {
    int c = text.codePointAt(next);
    boolean shows = !Character.isISOControl(c) && Character.isDefined(c);
    return shows && !isLoneSurrogate(c)
        ? character(Character.toString(c))
        : Phrase.of(NetworkWords.UNPRINTABLE);
  }

  private static Phrase character(String shown) {
    return Phrase.of(NetworkWords.CHARACTER).own("character", shown);
  }

  private static boolean isLoneSurrogate(int c) {
    return Character.getType(c) == Character.SURROGATE;
  }

  private boolean atEnd() {
    return next == text.length();
  }

  private boolean skip(String token) {
    skipSpace();
    boolean there = text.startsWith(token, next);
    next += there ? token.length() : 0;
    return there;
  }

  private boolean skip(Pattern token) {
    Matcher matcher = token.matcher(text).region(next, text.length());
    boolean there = matcher.lookingAt();
    next = there ? matcher.end() : next;
    return there;
  }

  private void skipSpace() {
    while (!atEnd() && isSpace(text.charAt(next))) {
      next++;
    }
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }
}

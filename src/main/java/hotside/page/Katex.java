// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mozilla.javascript.Context;
import org.mozilla.javascript.ContextFactory;
import org.mozilla.javascript.Function;
import org.mozilla.javascript.JavaScriptException;
import org.mozilla.javascript.RhinoException;
import org.mozilla.javascript.Script;
import org.mozilla.javascript.Scriptable;
import org.mozilla.javascript.ScriptableObject;

/**
 * KaTeX on a script engine that can reach nothing of Java and is cut off after a set amount of
 * work, so TeX from a stranger costs bounded time. Interpreted: KaTeX is large and runs for
 * milliseconds, so compiling it first takes three times as long as it saves.
 */
final class Katex {
    private static final String RESOURCE =
            "/META-INF/resources/webjars/katex/0.16.4/dist/katex.min.js";

    /** Script steps that one formula may take; a usual one takes about a hundredth. */
    private static final int WORK_ALLOWED = 20_000_000;

    private static final int DEEPEST_CALL = 2_000;

    /**
     * What would make a link, an image or a raw HTML attribute is refused rather than drawn in red,
     * as is a comment that swallows the rest of the formula.
     */
    private static final String RENDER =
            """
            (function (tex, display) {
              return katex.renderToString(tex, {
                output: 'mathml', displayMode: display, throwOnError: true,
                maxExpand: 300, maxSize: 20,
                trust: function (context) {
                  throw new katex.ParseError(context.command + ' is switched off here');
                },
                strict: function (code, message, token) {
                  if (code === 'commentAtEnd') {
                    throw new katex.ParseError(
                        '% hides the rest of the formula; write \\\\% for a percent sign');
                  }
                  if (code === 'unknownSymbol') {
                    throw new katex.ParseError('no way to draw this character', token);
                  }
                  return 'ignore';
                }
              });
            })
            """;

    private static final Pattern PLACED =
            Pattern.compile("(.*) at (?:position (\\d+)|end of input): (.*)", Pattern.DOTALL);

    private final ContextFactory contexts = new Fenced();
    private ScriptableObject scope;
    private Function render;

    /** Loads KaTeX if that has not been done: about half a second. */
    synchronized void start() {
        if (render != null) {
            return;
        }
        contexts.call(
                context -> {
                    ScriptableObject fresh = context.initSafeStandardObjects();
                    Source.COMPILED.exec(context, fresh);
                    render = (Function) context.evaluateString(fresh, RENDER, "render", 1, null);
                    scope = fresh;
                    return null;
                });
    }

    /**
     * One formula as KaTeX writes it: a span with MathML and the TeX in it.
     *
     * @throws MathsException if the TeX cannot be set
     */
    synchronized String render(String tex, boolean display) {
        TexGuard.check(tex);
        start();
        try {
            return (String)
                    contexts.call(
                            context -> {
                                Object[] arguments = {tex, display};
                                return render.call(context, scope, scope, arguments);
                            });
        } catch (JavaScriptException e) {
            throw explained(e, tex);
        } catch (RhinoException | StackOverflowError e) {
            throw tooDeep();
        } catch (TooMuchWork e) {
            throw new MathsException(
                    "the formula takes too much work to set; simplify it or write it as several",
                    0);
        }
    }

    /** What the script engine finds under this name; for the test that it finds nothing of ours. */
    synchronized String typeOf(String name) {
        start();
        return (String)
                contexts.call(
                        context ->
                                context.evaluateString(scope, "typeof " + name, "typeof", 1, null));
    }

    private static MathsException explained(JavaScriptException e, String tex) {
        String message = said(e).replaceFirst("^KaTeX parse error: ", "");
        if (message.startsWith("Too many expansions")) {
            return new MathsException("macros expand without end; write the formula out", 0);
        }
        if (message.contains("maximum stack depth")) {
            return tooDeep();
        }
        Matcher placed = PLACED.matcher(message);
        if (!placed.matches()) {
            String culprit = message.substring(0, (message + " ").indexOf(' '));
            return new MathsException(message, tex.indexOf(culprit) + 1);
        }
        // A fault inside a macro's own text is placed there, which means nothing to the writer.
        boolean ours = tex.contains(placed.group(3).replaceAll("[\u0332…]", ""));
        int position =
                placed.group(2) == null ? tex.length() + 1 : Integer.parseInt(placed.group(2));
        return new MathsException(placed.group(1), ours ? position : 0);
    }

    private static String said(JavaScriptException e) {
        Object value = e.getValue();
        return String.valueOf(
                value instanceof Scriptable error
                        ? ScriptableObject.getProperty(error, "message")
                        : value);
    }

    private static MathsException tooDeep() {
        return new MathsException("the formula nests too deep to be set; simplify it", 0);
    }

    /** Reads and parses the script once for all engines; what is kept cannot change. */
    private static final class Source {
        static final Script COMPILED =
                new Fenced().call(context -> context.compileString(read(), RESOURCE, 1, null));

        private static String read() {
            try (InputStream in = Katex.class.getResourceAsStream(RESOURCE)) {
                if (in == null) {
                    throw new IllegalStateException("not on the class path: " + RESOURCE);
                }
                return new String(in.readAllBytes(), StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** An error, not an exception, so that no script can catch it. */
    private static final class TooMuchWork extends Error {
        private static final long serialVersionUID = 1;
    }

    private static final class Fenced extends ContextFactory {
        @Override
        protected Context makeContext() {
            Context context = new Metered(this);
            context.setLanguageVersion(Context.VERSION_ES6);
            context.setInterpretedMode(true);
            context.setMaximumInterpreterStackDepth(DEEPEST_CALL);
            context.setInstructionObserverThreshold(WORK_ALLOWED / 100);
            context.setClassShutter(name -> false);
            return context;
        }

        @Override
        protected void observeInstructionCount(Context context, int instructions) {
            ((Metered) context).spend(instructions);
        }
    }

    private static final class Metered extends Context {
        private int spent;

        Metered(ContextFactory factory) {
            super(factory);
        }

        void spend(int instructions) {
            spent += instructions;
            if (spent > WORK_ALLOWED) {
                throw new TooMuchWork();
            }
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.content.ContentFile;
import hotside.content.ContentFolder;
import hotside.content.Finding;
import hotside.page.ContentCheck;
import hotside.speech.Language;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells an author what is wrong with lessons and problems, all of it at once. */
@Command(
        name = "check-content",
        description =
                "Checks lessons and problems: those of a folder, or those that come with the program.",
        mixinStandardHelpOptions = true)
final class CheckContentCommand implements Callable<Integer> {
    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "DIR",
            description = "a folder with .md files, at any depth")
    private Path folder;

    @Option(names = "--short", description = "one line a finding")
    private boolean brief;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        List<Finding> findings = new ArrayList<>();
        List<ContentFile> files = new ArrayList<>();
        for (ContentFolder each : folders()) {
            findings.addAll(each.findings());
            files.addAll(each.files());
        }
        ContentCheck check = new ContentCheck();
        findings.addAll(check.check(files));
        for (ContentFolder each : translations()) {
            findings.addAll(each.findings());
            findings.addAll(check.checkTranslations(each.files()));
            files.addAll(each.files());
        }
        PrintWriter out = spec.commandLine().getOut();
        findings.forEach(finding -> out.println(brief ? finding.oneLine() : finding.text() + "\n"));
        out.println(
                counted(files.size(), "file")
                        + ", "
                        + check.sound()
                        + " sound, "
                        + counted(findings.size(), "finding"));
        return findings.isEmpty() ? CommandLineDoor.FINE : CommandLineDoor.FINDINGS;
    }

    /** Folders named after a language, in the folders of content. */
    private List<ContentFolder> translations() {
        List<ContentFolder> found = new ArrayList<>();
        for (Language language : Language.values()) {
            if (folder == null && language != Language.ENGLISH) {
                found.add(ContentFolder.ofResources("hotside/lessons/" + language.code()));
                found.add(ContentFolder.ofResources("hotside/problems/" + language.code()));
            } else if (folder != null) {
                Stream.of("", "lessons", "problems")
                        .map(name -> folder.resolve(name).resolve(language.code()))
                        .filter(Files::isDirectory)
                        .map(ContentFolder::read)
                        .forEach(found::add);
            }
        }
        return found;
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private List<ContentFolder> folders() {
        if (folder == null) {
            return List.of(
                    ContentFolder.ofResources("hotside/lessons"),
                    ContentFolder.ofResources("hotside/problems"));
        }
        if (!Files.isDirectory(folder)) {
            throw new UsageException("There is no folder " + folder + ".");
        }
        return List.of(ContentFolder.read(folder));
    }
}

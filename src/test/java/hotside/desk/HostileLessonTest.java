// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import hotside.content.ContentFile;
import hotside.content.ContentReader;
import hotside.course.Lesson;
import hotside.course.LessonReader;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Proxy;
import java.net.ProxySelector;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A lesson from a stranger, in the real window, beside a server that counts who calls. */
class HostileLessonTest {
    private static final String HEAD =
            """
            ---
            title: A lesson from a stranger
            strand: Strange
            skills: strange.none
            minutes: 1
            sources: none
            ---
            """;

    private final AtomicInteger calls = new AtomicInteger();
    private final List<String> left = new ArrayList<>();
    private ProxySelector before;
    private HttpServer server;
    private String address;
    private RecordKeeper keeper;
    private DeskWindow window;
    private Stage stage;

    @TempDir private Path data;

    @BeforeEach
    void startTheServerAndTheDesk() throws IOException {
        // The last line of defence is taken away: the page itself has to hold.
        before = ProxySelector.getDefault();
        ProxySelector.setDefault(ProxySelector.of(null));
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext(
                "/",
                exchange -> {
                    calls.incrementAndGet();
                    exchange.sendResponseHeaders(204, -1);
                    exchange.close();
                });
        server.start();
        address = "http://127.0.0.1:" + server.getAddress().getPort();
        Screen.start();
        keeper = RecordKeeper.open(data, Platform::runLater);
        Library library = Libraries.read();
        stage =
                Screen.on(
                        () -> {
                            window =
                                    new DeskWindow(
                                            library,
                                            Settings.USUAL,
                                            keeper,
                                            () -> 1,
                                            data.resolve("page"),
                                            left::add);
                            Stage shown = new Stage();
                            shown.setScene(window.scene());
                            shown.show();
                            return shown;
                        });
        Screen.until(() -> window.page().ready().isDone());
    }

    @AfterEach
    void stop() {
        Screen.run(stage::close);
        keeper.close();
        server.stop(0);
        ProxySelector.setDefault(before);
    }

    @Test
    void nothingIsFetchedRunOrReadFromDisk() throws IOException {
        Path secret = Files.writeString(data.resolve("secret.txt"), "top secret");
        open(
                """
                <script>document.getElementById('page').innerHTML='<h1>taken over</h1>'</script>
                <meta http-equiv="refresh" content="0;url=@/refresh">
                <img src="@/img.png" onerror="document.title='ran'">
                <iframe src="@/frame"></iframe><iframe src="file://#"></iframe>
                <link rel="stylesheet" href="@/css"><style>@import url(@/import);</style>
                <object data="@/object"></object><embed src="@/embed">
                <video src="@/video"></video><svg><image href="@/svg.png"/></svg>
                <form action="@/form"><input type="submit" id="strange-submit"></form>

                ![remote picture](@/picture.png) ![from disk](file://#)
                ![in a jar](jar:file:/x.jar!/x.png)

                [a link](@/link) [a trick](javascript:document.title='ran') [data](data:text/html,<script>1</script>)
                """
                        .replace("@/", address + "/")
                        .replace("#", secret.toString()));
        Screen.frames(30);
        String text = Screen.on(() -> window.page().text());
        assertEquals(0, calls.get(), "requests that reached the server");
        assertTrue(text.contains("<script>"), "raw HTML is shown as text");
        assertTrue(text.contains("A lesson from a stranger"), "the page is still ours");
        assertFalse(text.contains("top secret"), "no file is read");
    }

    @Test
    void aLinkAsksBeforeItLeaves() throws IOException {
        open("[a link](" + address + "/link)");
        Screen.run(() -> window.page().clickFirstLink());
        Screen.frames(30);
        assertEquals(List.of(address + "/link"), left, "the person is asked");
        assertEquals(0, calls.get(), "and nothing is fetched");
    }

    @Test
    void theServerWouldHaveCounted() throws IOException {
        URI.create(address + "/").toURL().openConnection(Proxy.NO_PROXY).getHeaderField(0);
        assertEquals(1, calls.get());
    }

    private void open(String body) {
        ContentFile file = ContentReader.read("09-strange/01-stranger.md", HEAD + body);
        Lesson lesson =
                LessonReader.read(file)
                        .orElseThrow(() -> new AssertionError(file.findings().list()));
        Screen.run(() -> window.open(lesson));
        Screen.until(() -> window.page().text().contains("A lesson from a stranger"));
    }
}

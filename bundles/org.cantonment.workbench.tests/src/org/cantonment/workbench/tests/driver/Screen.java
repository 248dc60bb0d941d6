package org.cantonment.workbench.tests.driver;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.cantonment.editor.model.DocumentModels;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/** The screen as a test sees it. All methods are called on the screen's thread, as the tests are. */
public final class Screen {

    private static final int TICK_MILLIS = 10;
    private static final int SETTLE_MILLIS = 400;
    private static final long LIMIT_NANOS = 30_000_000_000L;

    private Screen() {
    }

    /**
     * Lets the window work until something is so.
     *
     * @param what what is waited for, in words; names the picture that is taken if it never comes
     * @param condition asked again after every event and every tick
     */
    public static void until(String what, BooleanSupplier condition) {
        Display display = Display.getCurrent();
        long end = System.nanoTime() + LIMIT_NANOS;
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > end) {
                picture("failed-" + what.replaceAll("[^A-Za-z0-9]+", "-"));
                fail("It never came to this: " + what);
            }
            display.timerExec(TICK_MILLIS, () -> { });
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
    }

    /**
     * Waits until a thing is there.
     *
     * @param <T> its type
     * @param what what is waited for, in words
     * @param supplier gives the thing, or null as long as it is not there
     * @return the thing
     */
    public static <T> T the(String what, Supplier<T> supplier) {
        Object[] found = { null };
        until(what, () -> {
            found[0] = supplier.get();
            return found[0] != null;
        });
        @SuppressWarnings("unchecked")
        T thing = (T) found[0];
        return thing;
    }

    /** Waits until everything that follows from the last edit or save is done and drawn. */
    public static void idle() {
        until("all is quiet", Screen::quiet);
        // what the workers handed over last is drawn by events that are queued now
        Display display = Display.getCurrent();
        boolean[] drawn = { false };
        display.asyncExec(() -> drawn[0] = true);
        until("all is drawn", () -> drawn[0] && quiet());
    }

    private static boolean quiet() {
        return DocumentModels.all().idle() && Job.getJobManager().find(ResourcesPlugin.FAMILY_AUTO_BUILD).length == 0
                && Job.getJobManager().find(ResourcesPlugin.FAMILY_MANUAL_BUILD).length == 0
                && Stream.of("findings", "eras", "adopting", "buying").noneMatch(
                        view -> Job.getJobManager().find("org.cantonment.workbench." + view).length > 0);
    }

    /**
     * Takes a picture of the whole screen.
     *
     * @param name its file name without {@code .png}; it lands in the folder that the build names
     */
    public static void picture(String name) {
        ImageData shot = shot();
        try {
            ImageLoader loader = new ImageLoader();
            loader.data = new ImageData[] { shot };
            Path folder = Path.of(System.getProperty("cantonment.pictures", "target/pictures"));
            Files.createDirectories(folder);
            loader.save(folder.resolve(name + ".png").toString(), SWT.IMAGE_PNG);
        } catch (IOException refused) {
            throw new UncheckedIOException(refused);
        }
    }

    /**
     * What the window looks like once it has come to rest.
     *
     * @return its pixels, from its upper left corner on the screen
     */
    public static ImageData shot() {
        Display display = Display.getCurrent();
        boolean[] settled = { false };
        display.timerExec(SETTLE_MILLIS, () -> settled[0] = true);
        until("what moves has come to rest", () -> settled[0]);
        display.update();
        Rectangle bounds = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell().getBounds();
        Image image = new Image(display, bounds.width, bounds.height);
        GC gc = new GC(display);
        try {
            gc.copyArea(image, bounds.x, bounds.y);
            return image.getImageData();
        } finally {
            gc.dispose();
            image.dispose();
        }
    }
}

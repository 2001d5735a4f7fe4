package gudgeon.app.web.jobs;

import gudgeon.app.desk.Job;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.page.Pages;
import java.util.UUID;

/** Where the pages of a job are. */
public final class JobPaths {
    private JobPaths() {}

    public static String job(Job job) {
        return "/jobs/" + job.id();
    }

    public static String strip(Job job) {
        return job(job) + "/strip";
    }

    /** Where a photo is loaded from. */
    public static String photo(Job job, String sha256) {
        return job(job) + "/photos/" + sha256;
    }

    /**
     * Where a photo is taken.
     *
     * @param about ids of what it shows, parted by commas
     * @param back path to come back to
     */
    public static String photo(Job job, String about, String back) {
        return job(job) + "/photo?about=" + EnginePaths.encoded(about) + "&back=" + EnginePaths.encoded(back);
    }

    public static String bench(Job job) {
        return job(job) + "/bench";
    }

    public static String buildBench(Job job) {
        return job(job) + "/build/bench";
    }

    /**
     * Where a note is written.
     *
     * @param about id of what it is about
     * @param back path to come back to
     */
    public static String note(Job job, String about, String back) {
        return job(job) + "/note?about=" + EnginePaths.encoded(about) + "&back=" + EnginePaths.encoded(back);
    }

    /** Where the last stroke is taken back. @param back path to come back to */
    public static String undo(Job job, String back) {
        return job(job) + "/undo?back=" + EnginePaths.encoded(back);
    }

    /** The page of this job that one came from, as an address or a form names it; the bench when it names none. */
    public static String back(Job job, String typed) {
        String path = Pages.local(typed);
        return path.startsWith(job(job) + "/") ? path : bench(job);
    }

    /** A path of this program that tells there what an entry saved. */
    public static String saying(String path, UUID entry) {
        return path + (path.contains("?") ? "&" : "?") + "said=" + entry;
    }
}

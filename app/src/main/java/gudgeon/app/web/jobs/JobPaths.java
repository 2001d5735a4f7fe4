package gudgeon.app.web.jobs;

import gudgeon.app.desk.Job;
import gudgeon.app.web.engines.EnginePaths;

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
}

package gudgeon.app.web.jobs;

import gudgeon.app.desk.Job;

/** Where the pages of a job are. */
public final class JobPaths {
    private JobPaths() {}

    public static String job(Job job) {
        return "/jobs/" + job.id();
    }

    public static String strip(Job job) {
        return job(job) + "/strip";
    }

    public static String bench(Job job) {
        return job(job) + "/bench";
    }
}

package gudgeon.app.web.measuring;

import gudgeon.app.desk.Job;
import gudgeon.app.web.engines.EnginePaths;
import gudgeon.app.web.jobs.JobPaths;

/** Where the pages about measuring are. */
final class MeasuringPaths {
    private MeasuringPaths() {}

    static String list(Job job) {
        return JobPaths.job(job) + "/measure";
    }

    static String feature(Job job, String feature) {
        return list(job) + "/feature/" + EnginePaths.encoded(feature);
    }
}

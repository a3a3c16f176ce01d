package pilefolio.checks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import pilefolio.model.Submission;
import pilefolio.standards.Combination;
import pilefolio.standards.DesignBasis;

/**
 * What is checked: the submission, its design basis, and what checks share while one run lasts.
 * Safe to use from the threads that write the documents.
 */
public final class Job {
  private final Submission submission;
  private final DesignBasis basis;
  private final Map<Object, Object> shared = new HashMap<>();

  /**
   * A job.
   *
   * @param submission what the user described
   * @param basis the design basis with the user's overrides
   */
  public Job(Submission submission, DesignBasis basis) {
    this.submission = submission;
    this.basis = basis;
  }

  /** What the user described. */
  public Submission submission() {
    return submission;
  }

  /** The design basis with the user's overrides. */
  public DesignBasis basis() {
    return basis;
  }

  /** The combinations that are run. */
  public List<Combination> combinations() {
    return basis.combinations();
  }

  /**
   * A result that several checks need, worked out once.
   *
   * @param key what it is; usually a record of the class that makes it and the run's id
   * @param make works it out; may ask for other shared results
   */
  public synchronized <T> T shared(Object key, Class<T> type, Function<Job, T> make) {
    if (!shared.containsKey(key)) {
      shared.put(key, make.apply(this));
    }
    return type.cast(shared.get(key));
  }
}

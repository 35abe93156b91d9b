/**
 * What went wrong in a part of the planning. Whatever it was, the plan found before stands.
 * `out-of-memory`, `broke-down`, `hung`: the job ended with what it had told so far.
 * `solve-failed`, `solve-wrong`, `solve-slow`: one solve came to nothing, and what was there before it was kept; `solve-slow`
 * alone is the clock's doing, so that another machine may find another plan.
 */
export type Trouble = "out-of-memory" | "broke-down" | "hung" | "solve-failed" | "solve-wrong" | "solve-slow";

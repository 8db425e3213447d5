/** What is wrong with a wall, in plain words for whoever made it: a fault of the planner, never of the job. */
export type WallFault = string;

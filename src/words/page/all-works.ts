/** What can be done with all works of a show. */
export const ALL_WORKS = {
  addWork: "Add a work",
  onTable: "On the table",
  asList: "As a list",
  howShown: "How the works are shown",
  anotherShow: "Another show",
  saveCopy: "Save a copy",
} as const;

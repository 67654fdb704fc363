/**
 * What client and server say to each other. Kept for sharing a record between devices and people: nothing is said yet.
 */
export {};

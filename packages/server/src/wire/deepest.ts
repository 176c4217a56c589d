/** How deep lists and objects may stand within one another in what we are sent; a bench needs four. */
export const deepest = 100;

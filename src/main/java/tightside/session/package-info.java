/**
 * A session at the bench: what is opened, how far it is turned, reseated, worn and counted, every
 * step of it named and undone, and what is to be shown for it.
 *
 * <p>All of it is plain Java. A {@link tightside.session.Snapshot} is the whole state; an {@link
 * tightside.session.Edit} is a named step to the next one; a {@link tightside.session.History} is
 * the list of them; a {@link tightside.session.SessionView} is what a person sees of one. The
 * window only draws it, and so does not have to be opened to be tested.
 */
package tightside.session;

/**
 * Model files: reading them with every mistake told in words at its line and column, writing them
 * so that they read back equal, and never leaving half a file behind.
 *
 * <p>A text becomes a tree of located {@link tightside.files.Node nodes}; the tree is decoded into
 * shafts, chains, engine and job with all that is wrong gathered on the way; what is clean so far
 * is asked whether it makes a drive, and then whether its chains fit. All words stand in one {@link
 * tightside.files.Catalogue}.
 *
 * <p>Format 1 is YAML with sections, lists and single values alone. Its JSON Schema is {@code
 * tightside/model-1.schema.json} among the resources. An editor that speaks the YAML language
 * server's protocol completes and checks keys if a model's first line names the schema:
 *
 * <pre>{@code
 * # yaml-language-server: $schema=../src/main/resources/tightside/model-1.schema.json
 * }</pre>
 *
 * <p>The schema knows keys, types and limits; only the reader knows whether the whole makes a
 * drive.
 */
package tightside.files;

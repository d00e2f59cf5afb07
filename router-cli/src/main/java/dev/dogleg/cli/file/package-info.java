/**
 * Text files that a person saved, read whole.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.cli.file.TextFile} looks at size and kind first, then
 * recognises the encoding.
 *
 * <p><b>Needs.</b> {@code fault}. <b>Promises.</b> What is wrong with a file is a fault, never an
 * exception. <b>Costs.</b> A file is held in memory once; its size is looked at before it is read.
 *
 * <p><b>Where it comes from.</b> Strict decoding is java.nio's; Windows-1252 as the fallback is
 * common practice for tables saved by spreadsheets (the WHATWG encoding standard falls back to it
 * too).
 */
package dev.dogleg.cli.file;

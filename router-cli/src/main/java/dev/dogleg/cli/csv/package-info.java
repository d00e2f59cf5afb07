/**
 * Tables of a book: from CSV files to records.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.cli.csv.BookReader} reads a book folder, or one wide
 * bookings file, into a {@link dev.dogleg.model.Book}. Inside, a table goes three steps: {@code
 * RecordCutter} finds the records, {@code TableReader} parses them (OpenCSV) and names their cells
 * by {@link dev.dogleg.cli.csv.Column}, the record readers make clients, pets and bookings of them.
 *
 * <p><b>Needs.</b> {@code fault}, {@code model}, {@code groom} (words for breeds and services), the
 * card. <b>Promises.</b> All faults of a run at once, each with file, row, column, value, what was
 * expected and a hint; one bad row is set aside, the rest is read; same files, same records and
 * ids, in any order of rows; nothing a file holds makes it throw. <b>Costs.</b> Linear in the file;
 * at most 20 MB, 100,000 rows, 50 lines a record, 10,000 characters a field.
 *
 * <p><b>Where it comes from.</b> RFC 4180; damage by spreadsheets from experience (common practice,
 * no source).
 */
package dev.dogleg.cli.csv;

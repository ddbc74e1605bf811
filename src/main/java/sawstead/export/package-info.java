/**
 * Files for machines and other programs, one package a format below this one.
 *
 * <p>Enters: solids with their ids and places. Leaves: a folder that holds every file of one build.
 * Guaranteed: the folder is replaced whole or not at all, nothing is written outside it, and
 * nothing in it that a person put there is lost. Knows nothing of layouts, books or windows, nor
 * how the panels were designed.
 */
package sawstead.export;

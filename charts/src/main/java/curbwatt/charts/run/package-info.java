/** Runs a ready scenario and keeps everything that the charts, the files and the words are made from. */
package curbwatt.charts.run;

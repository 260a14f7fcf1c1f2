package stirtide.events.day;

/**
 * One bowl of a mix that fills two.
 *
 * @param bowl bowl id
 * @param service service number
 * @param run number of the run within the service, from 1
 * @param bowlSizeId size of the bowl
 * @param milligrams grams of the mix that are to be in it
 */
public record BatchShare(String bowl, int service, int run, String bowlSizeId, int milligrams) {}

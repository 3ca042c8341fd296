package tightside.lesson;

/** Why one part of a prediction is as it is, by the geometry. */
public record Explained(Part part, String why) {}

namespace Loadmark.Processes;

/// <summary>What in the surroundings keeps the program from answering at all.</summary>
/// <param name="Sentence">What it is, and what to do.</param>
/// <param name="Code">The <see cref="ExitCode"/>.</param>
internal sealed record SurroundingTrouble(string Sentence, int Code);

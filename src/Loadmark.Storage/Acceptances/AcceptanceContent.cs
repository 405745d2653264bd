namespace Loadmark.Storage.Acceptances;

/// <summary>What is kept of measuring a rig.</summary>
/// <param name="Version">The version of the rig that is measured.</param>
/// <param name="RigText">That rig, whole, whatever becomes of it later.</param>
/// <param name="Readings">Who measured what, as a file of readings has it.</param>
/// <param name="Verdict">What came of it, in a word.</param>
public sealed record AcceptanceContent(string Version, string RigText, string Readings, string Verdict);

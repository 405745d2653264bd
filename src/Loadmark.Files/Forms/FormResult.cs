namespace Loadmark.Files.Forms;

/// <summary>What was typed into the fields of a thing.</summary>
/// <typeparam name="T">The thing.</typeparam>
/// <param name="Value">The thing; null where a field cannot be read.</param>
/// <param name="Faults">What is wrong, by key; a fault that is of no one key has an empty one.</param>
public sealed record FormResult<T>(T? Value, IReadOnlyDictionary<string, string> Faults)
    where T : class;

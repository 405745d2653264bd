using Loadmark.Core.Rigs;

namespace Loadmark.Core.Texts;

/// <summary>What one thing can be found by.</summary>
/// <param name="Tag">The thing's tag, such as <c>delay-2</c>.</param>
/// <param name="Texts">Other texts about it, the ones that tell more first: its name, then words it is filed under, then its label.</param>
public sealed record IndexedText(string Tag, ValueList<string> Texts);

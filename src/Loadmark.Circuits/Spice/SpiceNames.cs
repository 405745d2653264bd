using System.Text;

namespace Loadmark.Circuits.Spice;

/// <summary>Gives names that SPICE takes: letters, digits and underscores, and none that differ by case only.</summary>
internal sealed class SpiceNames
{
    private readonly Dictionary<string, string> _names = [];
    private readonly HashSet<string> _taken = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The name that stands for a name; the same each time.</summary>
    public string Of(string name)
    {
        if (_names.TryGetValue(name, out var known))
            return known;
        var text = new StringBuilder();
        foreach (var letter in name)
            text.Append(char.IsAsciiLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : '_');
        var candidate = text.ToString();
        for (var count = 2; !_taken.Add(candidate); count++)
            candidate = $"{text}_{count}";
        return _names[name] = candidate;
    }

    /// <summary>Keeps a name for itself: no other name will become it.</summary>
    public void Reserve(string name) =>
        _names[name] = _taken.Add(name) ? name : throw new ArgumentException($"{name} is taken.", nameof(name));
}

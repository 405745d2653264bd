using System.Globalization;

namespace Loadmark.Files.Entry;

/// <summary>Proposes ids that nothing has yet.</summary>
/// <param name="prefix">What goes before the number.</param>
/// <param name="digits">How many digits the number has at least.</param>
/// <param name="taken">The ids in use; what is proposed is added.</param>
internal sealed class IdSequence(string prefix, int digits, HashSet<string> taken)
{
    private int _last;

    /// <summary>The next free id.</summary>
    public string Next()
    {
        while (true)
        {
            var id = prefix + (++_last).ToString($"D{digits}", CultureInfo.InvariantCulture);
            if (taken.Add(id))
                return id;
        }
    }
}

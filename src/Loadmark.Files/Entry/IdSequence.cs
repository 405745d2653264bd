using System.Globalization;
using Loadmark.Core.Gear;

namespace Loadmark.Files.Entry;

/// <summary>Proposes ids that nothing has yet.</summary>
/// <param name="prefix">What goes before the number.</param>
/// <param name="digits">How many digits the number has at least.</param>
/// <param name="taken">The ids in use; what is proposed is added.</param>
/// <param name="elsewhere">Keys of tags that are not proposed, as <see cref="EntryTarget.Elsewhere"/>; null for none.</param>
internal sealed class IdSequence(string prefix, int digits, HashSet<string> taken, IReadOnlySet<string>? elsewhere = null)
{
    private int _last;

    /// <summary>The next free id.</summary>
    public string Next()
    {
        while (true)
        {
            var id = prefix + (++_last).ToString($"D{digits}", CultureInfo.InvariantCulture);
            if (elsewhere?.Contains(GearTag.KeyOf(id)) != true && taken.Add(id))
                return id;
        }
    }
}

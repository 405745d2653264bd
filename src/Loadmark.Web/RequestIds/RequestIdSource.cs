using System.Text;

namespace Loadmark.Web.RequestIds;

/// <summary>
/// Gives every request an id that can be told over the telephone: "K7Q2M9A-1F". The first part is when the program began, the second
/// counts, so that an id finds its line in the logs of months.
/// </summary>
/// <param name="clock">Tells when the program began.</param>
public sealed class RequestIdSource(TimeProvider clock)
{
    // Crockford's base 32: no I, L, O or U, which are misheard or misread.
    private const string Letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private readonly string _begin = Write((ulong)clock.GetUtcNow().ToUnixTimeSeconds());
    private ulong _last;

    /// <summary>The next id; letters of ASCII, digits and one dash.</summary>
    public string Next() => $"{_begin}-{Write(Interlocked.Increment(ref _last))}";

    private static string Write(ulong number)
    {
        var written = new StringBuilder();
        do
        {
            written.Insert(0, Letters[(int)(number % (ulong)Letters.Length)]);
            number /= (ulong)Letters.Length;
        }
        while (number > 0);
        return written.ToString();
    }
}

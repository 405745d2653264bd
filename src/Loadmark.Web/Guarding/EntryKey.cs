using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace Loadmark.Web.Guarding;

/// <summary>
/// The secret of one start of the program, without which it answers nobody: every account of a machine reaches its loopback address, and
/// what is kept is one user's.
/// </summary>
public sealed class EntryKey
{
    /// <summary>256 bit: twice what nobody guesses.</summary>
    private const int Length = 32;

    private readonly byte[] _digest;
    private readonly byte[] _cookieDigest;

    private EntryKey(byte[] secret)
    {
        Text = Base64Url.EncodeToString(secret);
        Cookie = Base64Url.EncodeToString(HMACSHA256.HashData(secret, "cookie"u8));
        (_digest, _cookieDigest) = (DigestOf(Text), DigestOf(Cookie));
    }

    /// <summary>The secret as letters, digits, - and _: in the address that is printed and in the header that programs send.</summary>
    public string Text { get; }

    /// <summary>
    /// What a browser keeps in its place: made of the secret, which it does not tell, since a browser sends its cookies to every port of an
    /// address.
    /// </summary>
    internal string Cookie { get; }

    /// <summary>A new one, from the system's source of random numbers.</summary>
    public static EntryKey New() => new(RandomNumberGenerator.GetBytes(Length));

    /// <summary>The address that lets a browser in.</summary>
    /// <param name="address">The program's address without a path: http://127.0.0.1:5230.</param>
    public string EntranceAt(string address) => $"{address}/?{Entrance.KeyName}={Text}";

    /// <summary>The header that lets a program in, as a line.</summary>
    public string HeaderLine => $"Authorization: {Entrance.Scheme} {Text}";

    /// <summary>Whether a text is the secret; takes as long for any text of a length.</summary>
    /// <param name="text">The text.</param>
    public bool Is(string text) => CryptographicOperations.FixedTimeEquals(DigestOf(text), _digest);

    /// <summary>Whether a text is what a browser was given; takes as long for any text of a length.</summary>
    /// <param name="text">The text.</param>
    internal bool IsCookie(string text) => CryptographicOperations.FixedTimeEquals(DigestOf(text), _cookieDigest);

    /// <summary>Never the secret: what is written into a log or a message by mistake tells nothing.</summary>
    public override string ToString() => "(secret)";

    private static byte[] DigestOf(string text) => SHA256.HashData(Encoding.UTF8.GetBytes(text));
}

using Microsoft.AspNetCore.Http;
using Microsoft.Net.Http.Headers;

namespace Loadmark.Web.Guarding;

/// <summary>
/// How the key comes with a request: in the address that is opened first, in a header, or as the cookie that the browser was given for it.
/// </summary>
internal static class Entrance
{
    /// <summary>The name of the key in the address.</summary>
    public const string KeyName = "key";

    /// <summary>How the header begins (RFC 6750).</summary>
    public const string Scheme = "Bearer";

    /// <summary>The key in the address, of a browser that opens it; null where there is none.</summary>
    /// <param name="request">The request.</param>
    public static string? KeyInAddress(HttpRequest request) =>
        HttpMethods.IsGet(request.Method) && !Problems.ProblemAnswer.IsFor(request) && request.Query[KeyName] is { Count: > 0 } keys
            ? keys.ToString()
            : null;

    /// <summary>The key in the header; null where there is no such header, and empty where it holds something else.</summary>
    /// <param name="request">The request.</param>
    public static string? KeyInHeader(HttpRequest request)
    {
        if (request.Headers[HeaderNames.Authorization] is not { Count: > 0 } header)
            return null;
        var text = header.ToString();
        return text.StartsWith($"{Scheme} ", StringComparison.OrdinalIgnoreCase) ? text[(Scheme.Length + 1)..].Trim() : "";
    }

    /// <summary>The cookie; null where there is none.</summary>
    /// <param name="request">The request.</param>
    public static string? CookieIn(HttpRequest request) => request.Cookies[CookieName(request.HttpContext)];

    /// <summary>
    /// The cookie's name, with the port in it: a browser keeps one jar for all ports of an address, and each may be another program's.
    /// </summary>
    /// <param name="context">The request.</param>
    public static string CookieName(HttpContext context) => $"loadmark-{context.Connection.LocalPort}";

    /// <summary>The address without the key in it, whole, so that a path of two slashes leads nowhere else.</summary>
    /// <param name="request">The request.</param>
    public static string AddressWithoutKey(HttpRequest request) =>
        $"{request.Scheme}://{request.Host}{request.PathBase}{request.Path}"
        + QueryString.Create(request.Query.Where(static pair => pair.Key != KeyName));
}

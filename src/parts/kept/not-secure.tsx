import { NOT_SECURE } from '../../words/frame/this-phone';
import { Notice } from '../blocks/notice';

/** Said on every page of an address that is not https (localhost counts as such). */
export const NotSecure = () => (
  <Notice kind="caution" title={NOT_SECURE.title}>
    <p>{NOT_SECURE.text}</p>
  </Notice>
);
